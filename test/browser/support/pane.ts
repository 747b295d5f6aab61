import type { FrameLocator, Page } from "playwright-core";

/** How long a busy machine may take over what a person would see done in a second or two. [ms] */
const PATIENCE = 240_000;

/** The task pane as a person meets it: by its words, in its frame beside the grid. */
export class PaneOnPage {
  private readonly frame: FrameLocator;

  constructor(private readonly page: Page) {
    page.setDefaultTimeout(PATIENCE);
    this.frame = page.frameLocator("iframe");
  }

  async go(view: string): Promise<void> {
    await this.frame.getByRole("button", { name: /^Menu/ }).click();
    await this.frame
      .getByRole("navigation", { name: "Views" })
      .getByRole("button", { name: view, exact: true })
      .click();
    await this.frame.getByRole("heading", { level: 1, name: view }).waitFor();
  }

  text(words: string | RegExp) {
    return this.frame.getByText(words);
  }

  /** Answers the question that stands before something is replaced. */
  async answer(name: string): Promise<void> {
    await this.frame.getByRole("alertdialog").getByRole("button", { name }).click();
  }

  button(name: string | RegExp) {
    return this.frame.getByRole("button", { name });
  }

  field(label: string | RegExp) {
    return this.frame.getByLabel(label);
  }

  /** All the words on show, each run of spaces made one. */
  async words(): Promise<string> {
    return (await this.frame.locator("body").innerText()).replace(/\s+/g, " ");
  }

  /** Waits until some words are on show. */
  async untilItSays(words: RegExp): Promise<string> {
    const last = Date.now() + PATIENCE;
    while (Date.now() < last) {
      const now = await this.words();
      if (words.test(now)) return now;
      await this.page.waitForTimeout(100);
    }
    throw new Error(`The pane never said ${words}. It says: ${await this.words()}`);
  }
}
