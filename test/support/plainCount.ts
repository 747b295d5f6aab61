import type { Reporter, TestModule } from "vitest/node";

/** Closes a test run with one plain line, "N passed, N failed", that any reader of a log can find. */
export const plainCount: Reporter = {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]) {
    let passed = 0;
    let failed = unhandledErrors.length;
    for (const module of modules) {
      if (module.errors().length > 0) failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed") passed += 1;
        if (state === "failed") failed += 1;
      }
    }
    console.log(`${passed} passed, ${failed} failed`);
  },
};
