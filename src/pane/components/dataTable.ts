import { html, nothing } from "lit";

/** The same figures as a chart, for reading: a table that opens below it. */
export function dataTable(
  caption: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  opens = "Read as a table",
) {
  const align = headings.map((_, i) => (rows.some((row) => isWords(row[i] ?? "")) ? "words" : nothing));
  return html`<details class="figures">
    <summary>${opens}</summary>
    <div class="scroll" tabindex="0" role="region" aria-label=${caption}>
      <table>
        <caption>
          ${caption}
        </caption>
        <thead>
          <tr>
            ${headings.map((heading, i) => html`<th scope="col" class=${align[i]}>${heading}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ([first, ...rest]) =>
              html`<tr>
                <th scope="row">${first}</th>
                ${rest.map((cell, i) => html`<td class=${align[i + 1]}>${cell}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
}

/** Figures stand under one another by their last digit; a column of words, or of counted words, begins at its edge. */
const isWords = (cell: string): boolean => /^\p{L}{2}|\d \p{L}+ \p{L}{3}/u.test(cell);
