import { defineConfig } from "vitest/config";
import { plainCount } from "../test/support/plainCount.ts";

/** Fast tests and browser tests are two projects so that the first can run alone while one works. */
export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    reporters: ["default", plainCount],
    setupFiles: ["test/support/customFunctions.ts", "test/support/propertySeed.ts"],
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: "fast",
          include: ["test/**/*.test.ts"],
          exclude: ["test/browser/**"],
          // Speed is a matter of the bench: a busy machine must not make a test fail.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["test/browser/**/*.test.ts"],
          testTimeout: 300_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
