import { strict } from "./strict";

/** The newest requirement set of each kind that this page stands in for: https://learn.microsoft.com/javascript/api/requirement-sets */
const SUPPORTED: Readonly<Record<string, readonly [number, number]>> = {
  ExcelApi: [1, 12],
  CustomFunctionsRuntime: [1, 3],
  SharedRuntime: [1, 1],
};

/** The used part of the global Office. */
export function standInForOffice(showPane: () => void): typeof Office {
  const requirements = strict<Office.RequirementSetSupport>("Office.context.requirements", {
    isSetSupported(name, version = "1.1") {
      const newest = SUPPORTED[name];
      const [major = 1, minor = 1] = String(version).split(".").map(Number);
      return newest !== undefined && (major < newest[0] || (major === newest[0] && minor <= newest[1]));
    },
  });
  const ready = { host: "Excel", platform: "OfficeOnline", addin: null } as unknown as Awaited<
    ReturnType<typeof Office.onReady>
  >;
  return strict<typeof Office>("Office", {
    onReady: ((callback?: (info: typeof ready) => void) => {
      callback?.(ready);
      return Promise.resolve(ready);
    }) as typeof Office.onReady,
    context: strict<Office.Context>("Office.context", {
      requirements,
      host: "Excel" as unknown as Office.HostType,
      officeTheme: undefined as unknown as Office.OfficeTheme,
    }),
    HostType: { Excel: "Excel" } as unknown as typeof Office.HostType,
    actions: strict<Office.Actions>("Office.actions", { associate: () => undefined }),
    addin: strict<Office.Addin>("Office.addin", {
      showAsTaskpane: () => Promise.resolve(showPane()),
    }),
  });
}
