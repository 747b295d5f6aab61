import type { Estimated } from "./job/readStand";

const formats = new Map<number, Intl.NumberFormat>();

/** A number with thousands commas and a fixed number of decimals. */
export function figure(value: number, decimals = 0): string {
  let format = formats.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat("en-US", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
    formats.set(decimals, format);
  }
  return format.format(value);
}

/** As a person writes it: up to two decimals, none that are zero. */
export const short = (value: number): string => String(Number(value.toFixed(2)));

/**
 * Shows a number no finer than its margin deserves: three figures of the margin, and at most one decimal.
 * 8,071 with a margin of 1,779 is shown as 8,070 and 1,780.
 */
export function roundedTo(margin: number | null): (value: number) => string {
  if (margin === null || !(margin > 0)) return (value) => figure(value, Math.abs(value) < 100 ? 1 : 0);
  const step = 10 ** Math.max(-1, Math.floor(Math.log10(margin)) - 2);
  return (value) => figure(Math.round(value / step) * step, step < 1 ? 1 : 0);
}

/** Value, margin and percent as one text: "8,070 ± 1,780 (22 %)". */
export function withMargin({ value, margin, percent, complete }: Estimated): string {
  const show = roundedTo(margin);
  if (complete) return show(value);
  if (margin === null) return `${show(value)}, margin not known yet`;
  return `${show(value)} ± ${show(margin)}${percent === null ? "" : ` (${figure(percent)} %)`}`;
}
