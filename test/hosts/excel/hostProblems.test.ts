import { describe, expect, it } from "vitest";
import { asHostProblem, missingTable } from "../../../src/hosts/excel/hostProblems";
import { HostProblem } from "../../../src/workbook/host";

const apiError = (code: string, message = "said by Excel") => Object.assign(new Error(message), { code });

describe("what Excel refuses", () => {
  it("says that Excel is busy while a cell is being edited", () => {
    expect(asHostProblem(apiError("InvalidOperationInCellEditMode"))).toMatchObject({
      kind: "busy",
      message: "Excel is busy with a cell. Press Esc or Enter in the sheet, then try again.",
    });
  });

  it("says what to do about a protected sheet and a name that is taken", () => {
    expect(asHostProblem(apiError("AccessDenied"))).toMatchObject({
      kind: "refused",
      message: expect.stringMatching(/Unprotect/) as string,
    });
    expect(asHostProblem(apiError("ItemAlreadyExists"))).toMatchObject({ kind: "refused" });
  });

  it("passes Excel's own words on for any other code, also from an error of another window", () => {
    expect(asHostProblem(apiError("GeneralException"))).toMatchObject({
      kind: "refused",
      message: "The spreadsheet could not do this (GeneralException). said by Excel",
    });
    expect(asHostProblem({ code: "InvalidArgument", message: "from a frame" })).toBeInstanceOf(HostProblem);
  });

  it("lets a sentence of our own and a bug of ours through as they are", () => {
    const sentence = missingTable("Trees");
    const bug = new TypeError("x is undefined");
    expect(asHostProblem(sentence)).toBe(sentence);
    expect(asHostProblem(bug)).toBe(bug);
    expect(sentence.message).toBe(
      "The table named Trees is missing. Build a new one on the Setup view; your data has not been changed.",
    );
  });
});
