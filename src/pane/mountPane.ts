import "./styles/pane.css";
import "./styles/fields.css";
import "./styles/views.css";
import "./styles/paper.css";
import "./styles/cut.css";
import "./styles/map.css";
import { nothing, render, type TemplateResult } from "lit";
import type { WorkbookHost } from "../workbook/host";
import { message } from "./components/message";
import { createDesks } from "./desks";
import type { DraftStore } from "./entry/draft";
import { firstState } from "./paneState";
import type { Pane } from "./pane";
import { firstLayout } from "./points/layoutState";
import { planOf } from "./plan/planOf";
import { createRefresher } from "./refresher";
import { createRunner } from "./runner";
import { createSolverDesk } from "./solver/solverDesk";
import { sentence } from "./sentence";
import { createStore } from "./store";
import { followTheme } from "./theme/followTheme";
import type { PaneTheme } from "./theme/paneThemes";
import { frame } from "./views/frame";
import type { ViewName } from "./views/viewNames";
import { views } from "./views/views";

export interface PaneOptions {
  /** Left out, the pane follows the system. */
  readonly theme?: PaneTheme;
  readonly view?: ViewName;
  /** Where half-typed lines are kept; left out, nowhere. */
  readonly drafts?: DraftStore;
  /** A whole number drawn by chance, the seed of points that are laid out; left out, 1. */
  readonly seed?: number;
  /** Starts the worker in which long work is done; left out, there is none. */
  readonly newWorker?: () => Worker;
}

export interface PaneHandle {
  /** Opens a view, as a button outside the pane asks for it. */
  readonly show: (view: ViewName) => void;
  readonly setTheme: (theme: PaneTheme | undefined) => void;
  /** Reads the workbook again. */
  readonly refresh: () => Promise<void>;
  readonly dispose: () => void;
}

/** Puts the task pane into an element, over whichever spreadsheet the host stands for. */
export function mountPane(root: HTMLElement, host: WorkbookHost, options: PaneOptions = {}): PaneHandle {
  const store = createStore({
    ...firstState,
    view: options.view ?? firstState.view,
    layout: { ...firstLayout, drawn: options.seed ?? firstLayout.drawn },
  });
  const theme = followTheme(root, options.theme);
  root.classList.add("woodlot-pane");

  let openStand: string | undefined;
  const refresher = createRefresher(store, host, () => {
    const settle = desks.beforeReading();
    return (job) => {
      settle();
      if (openStand === job.stand) return;
      openStand = job.stand;
      store.set({ plan: planOf(job) });
      desks.restore();
    };
  });
  const say = (said: string) => store.set({ said });
  const desks = createDesks({ store, host, drafts: options.drafts, refresh: refresher.refresh, say });

  const solver = createSolverDesk(store, options.newWorker);

  const focus = (id: string) => queueMicrotask(() => root.querySelector<HTMLElement>(`#${id}`)?.focus());
  const go = (view: ViewName) => {
    const { view: left, seen } = store.get();
    store.set({
      view,
      seen: [...seen, left],
      menuOpen: false,
      said: "",
      problem: "",
      question: undefined,
      firstWords: "seen",
    });
    focus(root.querySelector("[data-entry]")?.id ?? "pane-title");
  };
  const pane: Pane = {
    host,
    desk: desks.desk,
    logDesk: desks.logDesk,
    solver,
    boardDesk: desks.boardDesk,
    get state() {
      return store.get();
    },
    set: store.set,
    go,
    focus,
    say,
    run: createRunner(store),
    refresh: refresher.refresh,
  };

  const draw = () => render(frame(pane, shown(pane)), root);
  const stopDrawing = store.subscribe(draw);
  draw();
  void refresher.refresh();

  let stopWatching = () => {};
  let gone = false;
  host
    .watch(() => refresher.soon())
    .then(
      (stop) => (gone ? stop() : (stopWatching = stop)),
      (problem: unknown) => store.set({ problem: sentence(problem) }),
    );
  const onKey = (event: KeyboardEvent) => onPaneKey(event, pane);
  root.addEventListener("keydown", onKey);

  return {
    show: go,
    setTheme: (wanted) => theme.ask(wanted),
    refresh: refresher.refresh,
    dispose() {
      gone = true;
      stopWatching();
      solver.stop();
      stopDrawing();
      refresher.stop();
      theme.stop();
      root.removeEventListener("keydown", onKey);
      render(nothing, root);
    },
  };
}

/** The view, or what went wrong with it: one that cannot be drawn must not take the others with it. */
function shown(pane: Pane): TemplateResult {
  try {
    return views[pane.state.view](pane);
  } catch (problem) {
    return message({ kind: "problem", text: sentence(problem) });
  }
}

/** Keys that hold anywhere in the pane: Escape closes the menu, or goes back. */
function onPaneKey(event: KeyboardEvent, { set, go, state: { menuOpen, view } }: Pane): void {
  if (event.key !== "Escape" || event.defaultPrevented) return;
  if (menuOpen) set({ menuOpen: false });
  else if (view !== "home") go("home");
}
