import { classRules } from "../../core/cruise/classRules";
import { samplingMethods } from "../../core/cruise/methods";
import { menuRules } from "../../core/log/rules";
import { formats } from "../formats";
import type { EntryRule } from "../plan";
import { named } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import type { Setting } from "./setting";
import { asked, yesOrNo } from "./sheetParts";
import { treeSettings } from "./treeSettings";

/** The assumptions in the order in which they stand on the sheet Setup. */
export function settingsOf({ settings, invented }: Pick<WorkbookContent, "settings" | "invented">): readonly Setting[] {
  const list = (choices: readonly string[], message: string): EntryRule => ({
    kind: "list",
    choices,
    strict: true,
    message,
  });
  const rules = menuRules.map((rule) => rule.title);

  return [
    {
      name: named.stand,
      label: "Stand",
      value: settings.stand,
      unit: "",
      comment: "Its name on sheets and copies.",
    },
    {
      name: named.acres,
      label: "Acres",
      value: settings.acres,
      unit: "ac",
      comment: "Area that the plots stand for.",
      rule: asked(0.1, 100_000, "Acres, above 0."),
    },
    {
      name: named.acresMargin,
      label: "Acres may be off by",
      value: settings.acresMargin,
      unit: "ac",
      comment: "Either way; 0 when the lines were surveyed. It widens the range of the tract.",
    },
    {
      name: named.method,
      label: "Method",
      value: settings.method,
      unit: "",
      comment:
        "Point: an angle gauge picks the trees. Fixed: plots of known size. Strip: strips. All: every tree. Point and fixed: see Design.",
      rule: list(
        samplingMethods.map(({ title }) => title),
        "Point, Fixed, Strip, All, or Point and fixed.",
      ),
    },
    {
      name: named.size,
      label: "Gauge or plot size",
      value: settings.size,
      unit: "ft2/ac or ac",
      comment:
        "Basal area factor for points; acres of one plot or strip, or of the tract for All. Points may have their own.",
    },
    {
      name: named.confidence,
      label: "Confidence",
      value: settings.confidence,
      unit: "pct",
      comment: "95: of 100 cruises like this about 95 ranges would hold the true figure.",
      rule: asked(50, 99.9, "A percent from 50 to 99.9."),
    },
    {
      name: named.target,
      label: "Margin you can live with",
      value: settings.target,
      unit: "pct",
      comment: "Of the volume per acre; tells how many further plots to take.",
      rule: asked(1, 100, "A percent from 1 to 100."),
    },
    {
      name: named.rule,
      label: "Log rule",
      value: settings.rule,
      unit: "",
      comment:
        "For standing trees. Felled logs have the buyer's, on the sheet Logs. Prices per MBF belong to one rule.",
      rule: {
        kind: "list",
        choices: rules,
        strict: false,
        message: `Usually one of: ${rules.join(", ")}.`,
      },
    },
    {
      name: named.formClass,
      label: "Form class",
      value: settings.formClass,
      unit: "pct",
      comment: "Diameter inside bark at the top of the first log, in percent of DBH; 78 is usual.",
      rule: asked(65, 90, "A percent from 65 to 90."),
    },
    ...treeSettings(settings),
    {
      name: named.classWidth,
      label: "Class width",
      value: settings.classWidth,
      unit: "in",
      comment: "Of the diameter classes in the stand and stock tables.",
      rule: asked(0.5, 10, "Inches, from 0.5 to 10."),
    },
    {
      name: named.classRule,
      label: "Class rule",
      value: settings.classRule,
      unit: "",
      comment: "Middle: the 2-in class 12 holds 11.0 to under 13.0. Edge: 16.0 to under 18.0 is the class 17.",
      rule: list(
        classRules.map(({ title }) => title),
        "Middle or Edge.",
      ),
    },
    {
      name: named.units,
      label: "Units",
      value: "imperial",
      unit: "",
      comment: "The headings of this workbook are in inches, feet and acres.",
      rule: list(["imperial"], "This workbook is in inches, feet and acres."),
    },
    {
      name: named.minDbh,
      label: "Smallest DBH",
      value: settings.minDbh,
      unit: "in",
      comment: "The checks ask about a tree below it.",
      rule: asked(1, 80, "Inches, from 1 to 80."),
    },
    {
      name: named.maxDbh,
      label: "Largest DBH",
      value: settings.maxDbh,
      unit: "in",
      comment: "The checks ask about a tree above it.",
      rule: asked(1, 80, "Inches, from 1 to 80."),
    },
    {
      name: named.kerf,
      label: "Kerf",
      value: settings.kerf,
      unit: "in",
      comment: "Width of wood that your saw turns to sawdust.",
      rule: asked(0, 1, "Inches, from 0 to 1."),
      format: formats.thickness,
    },
    {
      name: named.realized,
      label: "Realized lumber",
      value: settings.realized,
      unit: "pct",
      comment: "Share of the best plan that comes off your mill: a guess until you tally some logs.",
      rule: asked(1, 100, "A percent from 1 to 100."),
    },
    {
      name: named.invented,
      label: "Invented figures",
      value: invented ? "Yes" : null,
      unit: "",
      comment: "Yes puts a warning into every title. Clear it when all figures are your own.",
      rule: yesOrNo,
    },
  ];
}
