import type { TemplateResult } from "lit";
import type { Pane } from "../pane";
import { boardsView } from "./boardsView";
import { checkView } from "./checkView";
import { compareView } from "./compareView";
import { homeView } from "./homeView";
import { lazyView } from "./lazyView";
import { logsView } from "./logsView";
import { planView } from "./planView";
import { rulesView } from "./rulesView";
import { shareView } from "./shareView";
import { standView } from "./standView";
import { tallyView } from "./tallyView";
import type { ViewName } from "./viewNames";

/** Every view there is; the menu lists the same names. */
export const views: Readonly<Record<ViewName, (pane: Pane) => TemplateResult>> = {
  home: homeView,
  plan: planView,
  points: lazyView(async () => (await import("./pointsView")).pointsView),
  tally: tallyView,
  measure: lazyView(async () => (await import("./measureView")).measureView),
  species: lazyView(async () => (await import("./speciesView")).speciesView),
  local: lazyView(async () => (await import("./localView")).localView),
  paste: lazyView(async () => (await import("./pasteView")).pasteView),
  check: checkView,
  stand: standView,
  cut: lazyView(async () => (await import("./cutView")).cutView),
  buck: lazyView(async () => (await import("./buckView")).buckView),
  logs: logsView,
  rules: rulesView,
  saw: lazyView(async () => (await import("./sawView")).sawView),
  cutList: lazyView(async () => (await import("./cutListView")).cutListView),
  allLogs: lazyView(async () => (await import("./allLogsView")).allLogsView),
  boards: boardsView,
  compare: compareView,
  share: shareView,
};
