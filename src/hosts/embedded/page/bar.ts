import { CannotOpen } from "./saved";

export interface BarActions {
  save(): void;
  open(fileText: string): Promise<void>;
  startOver(): Promise<void>;
  saveKeptAside(): Promise<void>;
}

export interface Bar {
  tellSaved(state: "saving" | "saved" | "failed"): void;
  /** Says something that a person should read. */
  tell(sentence: string): void;
  /** Says that an old workbook was kept aside, and offers it as a file. */
  tellKeptAside(why: string): void;
}

const SAVED = {
  saving: "Saving in this browser ...",
  saved: "Saved in this browser",
  failed: "Not saved: this browser keeps no data for this page. Save a file before you leave.",
};

/** The slim bar above the grid: what can be done with the workbook as a whole. */
export function bar(element: HTMLElement, actions: BarActions): Bar {
  const state = element.querySelector("#saved") as HTMLElement;
  const notice = document.getElementById("notice") as HTMLElement;
  const file = element.querySelector("#file") as HTMLInputElement;
  const ask = document.getElementById("start-over-question") as HTMLDialogElement;
  const button = (id: string, act: () => void) => document.getElementById(id)?.addEventListener("click", act);

  const tell = (sentence: string, ...more: Node[]) => {
    notice.replaceChildren(sentence, ...more);
    notice.hidden = sentence === "";
  };
  const attempt = async (act: () => Promise<void> | void) => {
    tell("");
    try {
      await act();
    } catch (problem) {
      tell(problem instanceof CannotOpen ? problem.message : `That did not work: ${String(problem)}`);
    }
  };

  button("save-file", () => void attempt(() => actions.save()));
  button("open-file", () => file.click());
  button("start-over", () => ask.showModal());
  ask.addEventListener("close", () => {
    if (ask.returnValue === "start over") void attempt(() => actions.startOver());
    ask.returnValue = "";
  });
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen) void attempt(async () => actions.open(await chosen.text()));
    file.value = "";
  });

  return {
    tell,
    tellSaved: (now) => {
      state.textContent = SAVED[now];
    },
    tellKeptAside: (why) => {
      const save = document.createElement("button");
      save.type = "button";
      save.textContent = "Save the old one as a file";
      save.addEventListener("click", () => void actions.saveKeptAside());
      tell(`${why} It is kept aside, and you see a new workbook. `, save);
    },
  };
}
