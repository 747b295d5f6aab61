import { describe, expect, it } from "vitest";
import { logRules } from "../../src/core/log/rules";
import { buildInfo, cautionOf, sourceOf } from "../../src/functions/trust";
import { sourcesSheet } from "../../src/workbook/sheets/sources";
import { startSheet } from "../../src/workbook/sheets/start";
import { demoWorkbook } from "../../src/demo/demoWorkbook";
import { formulasOf } from "./formulaParts";

const topicsIn = (name: string) =>
  formulasOf(demoWorkbook()).flatMap(({ formula }) =>
    [...formula.matchAll(new RegExp(`${name}\\("([^"]+)"\\)`, "g"))].map(([, topic = ""]) => topic),
  );

describe("what the workbook says of its sources", () => {
  it("asks for cautions that there are", () => {
    const topics = topicsIn("CAUTIONOF");
    expect(topics.length).toBeGreaterThan(5);
    for (const topic of topics) expect(cautionOf(topic).length).toBeGreaterThan(20);
  });

  it("keeps room for every source of its methods, and of any log rule", () => {
    for (const { formula, rows, columns } of sourcesSheet().spills) {
      const [, topic] = /SOURCEOF\("([^"]+)"\)/.exec(formula) ?? [];
      for (const one of topic === undefined ? logRules.map(({ title }) => title) : [topic]) {
        const answer = sourceOf(one);
        expect(answer.length, one).toBeGreaterThan(1);
        expect(answer.length, one).toBeLessThanOrEqual(rows);
        expect(answer[0]?.length, one).toBeLessThanOrEqual(columns);
      }
    }
  });

  it("keeps room for what built it", () => {
    const { rows, columns } = startSheet([]).spills[0] ?? { rows: 0, columns: 0 };
    expect(buildInfo().length).toBeLessThanOrEqual(rows);
    expect(buildInfo()[0]?.length).toBeLessThanOrEqual(columns);
  });
});
