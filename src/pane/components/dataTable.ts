import { html } from "lit";

/** The same figures as a chart, for reading: a table that opens below it. */
export const dataTable = (
  caption: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  opens = "Read as a table",
) =>
  html`<details class="figures">
    <summary>${opens}</summary>
    <div class="scroll" tabindex="0" role="region" aria-label=${caption}>
      <table>
        <caption>
          ${caption}
        </caption>
        <thead>
          <tr>
            ${headings.map((heading) => html`<th scope="col">${heading}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ([first, ...rest]) =>
              html`<tr>
                <th scope="row">${first}</th>
                ${rest.map((cell) => html`<td>${cell}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
