import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { doyle } from "../../../../src/core/log/rules/doyle";
import { doyleScribner } from "../../../../src/core/log/rules/doyleScribner";
import { scribner } from "../../../../src/core/log/rules/scribner";
import { scribnerDoyle } from "../../../../src/core/log/rules/scribnerDoyle";
import { log } from "../printedLog";

describe("Doyle-Scribner", () => {
  it("is Doyle up to and including 28 in, Scribner above", () => {
    expect(doyleScribner.scale(log(28, 16))).toBe(doyle.scale(log(28, 16)));
    expect(doyleScribner.scale(log(28.001, 16))).toBe(scribner.scale(log(28.001, 16)));
  });

  it("falls just above 28 in, as its words have it, and is back at 28.4 in", () => {
    const at28 = doyleScribner.scale(log(28, 16));
    expect(doyleScribner.scale(log(28.01, 16))).toBeLessThan(at28 - 15);
    expect(doyleScribner.scale(log(28.4, 16))).toBeGreaterThan(at28);
  });

  it("speaks in its own name where Doyle has no value", () => {
    expect(() => doyleScribner.scale(log(3, 16))).toThrow(OutOfRange);
    expect(() => doyleScribner.scale(log(3, 16))).toThrow(
      "Doyle-Scribner (from memory) as published has no value for 3 in x 16 ft.",
    );
  });
});

describe("Scribner-Doyle", () => {
  it("is the larger of the two, which cross at 24.7 in", () => {
    expect(scribnerDoyle.scale(log(24.7, 16))).toBe(scribner.scale(log(24.7, 16)));
    expect(scribnerDoyle.scale(log(24.8, 16))).toBe(doyle.scale(log(24.8, 16)));
  });

  it("is Scribner where a log is too thin for Doyle, and speaks in its own name below that", () => {
    expect(scribnerDoyle.scale(log(3.9, 16))).toBe(scribner.scale(log(3.9, 16)));
    expect(() => scribnerDoyle.scale(log(3, 16))).toThrow(
      "Scribner-Doyle (from memory) as published has no value for 3 in x 16 ft.",
    );
  });
});
