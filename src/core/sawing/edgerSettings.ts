import type { Inches } from "../basis/units";
import type { SawPlan } from "./sawingPattern";

/** Flitches that are edged alike, so that the widths are set once. */
export interface EdgerSetting {
  /** Of the boards side by side, the widest first. [in] */
  readonly widths: readonly Inches[];
  readonly flitches: number;
}

/** What is left to edge when the log is sawn up: flitches of like widths together, the widest first. */
export function edgerSettings({ flitches }: SawPlan): readonly EdgerSetting[] {
  const settings = new Map<string, EdgerSetting>();
  for (const { boards, edged } of flitches) {
    if (edged) continue;
    const widths = boards.map(({ piece }) => piece.width);
    const key = widths.join(" ");
    settings.set(key, {
      widths,
      flitches: (settings.get(key)?.flitches ?? 0) + 1,
    });
  }
  const total = ({ widths }: EdgerSetting) => widths.reduce<number>((sum, width) => sum + width, 0);
  return [...settings.values()].sort((a, b) => total(b) - total(a));
}
