import { textOf } from "../core/basis/choices";
import { InvalidInput } from "../core/basis/problem";
import { dollars, dollarsPerMbf } from "../core/basis/units";
import { breakEvenPrice as breakEven } from "../core/value/breakEvenPrice";
import { compareWays as compare, type Way } from "../core/value/compareWays";
import { homeSawnNet } from "../core/value/homeSawnNet";
import { valueRange as rangeOf } from "../core/value/valueRange";
import { answered, spilled } from "./shell/answers";
import { BadRows } from "./shell/badRows";
import { column, numberAt, sharedRows, type Column } from "./shell/columns";
import { isLeftOut, oneNumber } from "./shell/readings";

// Bounds are a choice of ours: beyond any woodlot, so that only a slip falls outside.
const MBF = { unit: "MBF", low: 0, high: 1e6 };
/** A lumber tally under one board foot is a slip, as is a job under a minute; 0 stands for none. */
const LUMBER = { unit: "MBF", low: 0.001, high: 1e6 };
const HOURS = { unit: "h", low: 0.01, high: 1e6 };
const PRICE = { unit: "$ per MBF", low: 0, high: 1e6 };
const DOLLARS = { unit: "$", low: 0, high: 1e10 };
const GAIN_OR_LOSS = { unit: "$", low: -1e10, high: 1e10 };

/**
 * Value of a volume of timber, with the range that its margin of error and the price bounds allow together.
 * @customfunction VALUERANGE
 * @param volume Estimated volume, in MBF (thousand board feet).
 * @param margin Margin of error of the volume, plus or minus, in MBF.
 * @param price Price, in $ per MBF of the same log rule.
 * @param [price_low] Lowest price to expect, in $ per MBF. 0 or left out: the price.
 * @param [price_high] Highest price to expect, in $ per MBF. 0 or left out: the price.
 * @returns One row: value, low (low volume at the low price, never below 0) and high (high volume at the high price), in $.
 */
export function valueRange(volume: any, margin: any, price: any, price_low?: any, price_high?: any): any[][] {
  return answered(() => {
    if (isLeftOut(volume)) return [["", "", ""]];
    const likely = dollarsPerMbf(oneNumber(price, "Price", PRICE));
    const { value, low, high } = rangeOf({
      volume: oneNumber(volume, "Volume", MBF),
      margin: oneNumber(margin, "Margin", MBF, 0),
      price: likely,
      priceLow: dollarsPerMbf(oneNumber(price_low, "Low price", PRICE, likely)),
      priceHigh: dollarsPerMbf(oneNumber(price_high, "High price", PRICE, likely)),
    });
    return [[value, low, high]];
  });
}

/**
 * What is left of home-sawn lumber when the work and all other costs are paid; below 0 is a loss.
 * @customfunction HOMESAWNET
 * @param lumber_value Value of the lumber, in $.
 * @param hours Hours of work, from the log to the sold board.
 * @param pay_per_hour Pay you ask for an hour, in $. 0 leaves your pay in the net.
 * @param other_costs All other costs, in $.
 * @param [lumber_mbf] Lumber sawn, in MBF (thousand board feet). Left out: no net per MBF.
 * @returns One row: net in $, net per hour in $ and net per MBF in $.
 */
export function homeSawNet(
  lumber_value: any,
  hours: any,
  pay_per_hour: any,
  other_costs: any,
  lumber_mbf?: any,
): any[][] {
  return answered(() => {
    const { net, perHour, perMbf } = homeSawnNet({
      lumberValue: dollars(oneNumber(lumber_value, "Lumber value", DOLLARS, 0)),
      hours: oneNumber(hours, "Hours", HOURS, 0),
      payPerHour: oneNumber(pay_per_hour, "Pay per hour", { unit: "$", low: 0, high: 10_000 }, 0),
      otherCosts: dollars(oneNumber(other_costs, "Other costs", DOLLARS, 0)),
      lumber: oneNumber(lumber_mbf, "Lumber", LUMBER, 0),
    });
    return [[net, perHour ?? "", perMbf ?? ""]];
  });
}

/**
 * Lumber price at which sawing logs at home brings as much as selling them.
 * @customfunction BREAKEVENPRICE
 * @param log_value What the logs would bring, in $.
 * @param costs All costs of turning them into lumber and selling it, in $.
 * @param lumber_mbf Lumber you could sell, in MBF (thousand board feet).
 * @returns Price in $ per MBF of lumber.
 */
export function breakEvenPrice(log_value: any, costs: any, lumber_mbf: any): number {
  return answered(() =>
    breakEven(
      dollars(oneNumber(log_value, "Log value", DOLLARS, 0)),
      dollars(oneNumber(costs, "Costs", DOLLARS, 0)),
      oneNumber(lumber_mbf, "Lumber", LUMBER, 0),
    ),
  );
}

/**
 * Ranks ways to use your timber by value, but calls none the better one while their ranges meet.
 * @customfunction COMPAREWAYS
 * @param names Column of the ways, such as sell standing, sell logs, saw at home.
 * @param values Column of what each way brings, in $.
 * @param lows Column of the least each way may bring, in $. A way with neither low nor high has no range but its value.
 * @param highs Column of the most each way may bring, in $.
 * @returns A heading row, then way, value, low, high and rank (1 is best) or "Too close to call".
 */
export function compareWays(names: any[][], values: any[][], lows: any[][], highs: any[][]): any[][] {
  return answered(() => {
    const rows = compare(waysIn(names, values, lows, highs)).map(({ name, value, low, high, rank }) =>
      rank === "No figures yet" ? [name, "", "", "", rank] : [name, value, low, high, rank],
    );
    return spilled(["Way", "Value $", "Low $", "High $", "Rank"], rows.length > 0 ? rows : [["No ways yet"]]);
  });
}

/** Rows that have a name. */
function waysIn(names: unknown, values: unknown, lows: unknown, highs: unknown): readonly Way[] {
  const [name, value, low, high] = [
    column(names, "Way"),
    column(values, "Value"),
    column(lows, "Low"),
    column(highs, "High"),
  ] as const;
  const ways: Way[] = [];
  const bad = new BadRows();
  const rows = sharedRows([name, value, low, high]);
  for (let row = 0; row < rows; row += 1) {
    const title = textOf(name.at(row));
    if (title === "" || title === "0") continue;
    bad.guard(row, () => {
      const amount = (list: Column) => dollars(numberAt(list, row, GAIN_OR_LOSS, 0));
      const [likely, least, most] = [amount(value), amount(low), amount(high)];
      if ((least === 0) !== (most === 0) && (likely < least || likely > most)) {
        throw new InvalidInput(`give "${title.slice(0, 60)}" both a low and a high, or neither.`);
      }
      const hasRange = least !== 0 || most !== 0;
      ways.push({ name: title, value: likely, low: hasRange ? least : likely, high: hasRange ? most : likely });
    });
  }
  bad.settle();
  return ways;
}
