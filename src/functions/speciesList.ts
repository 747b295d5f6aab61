import { textOf } from "../core/basis/choices";
import { byLogs, checkHeight, heightsMeasured } from "../core/cruise/checkHeight";
import { checkSpecies as problemWith } from "../core/tree/national/checkSpecies";
import { commonName, speciesFacts } from "../core/tree/national/speciesFacts";
import { answered, eachCell } from "./shell/answers";
import { checkCells } from "./shell/checkCells";
import { chosenOr } from "./shell/measuredIn";
import { blank, boundedNumber } from "./shell/readings";
import { speciesReading } from "./shell/speciesReading";

/**
 * What the national list tells of a species.
 * @customenum {string}
 */
export enum FactOfSpecies {
  /** Common name. */
  Name = "Name",
  /** Number in the national forest inventory. */
  Code = "FIA code",
  /** Softwood or hardwood. */
  Kind = "Kind",
  /** Species group of the national equations. */
  Group = "Group",
  /** Oven-dry weight over green volume. */
  Gravity = "Specific gravity",
  /** Water in green wood, in percent of its dry weight. */
  Moisture = "Green moisture pct",
  /** Weight of a cubic foot of green wood, in pounds. */
  Density = "Green lb per ft3",
  /** Diameter inside bark over diameter outside bark, averaged over the stem. */
  Bark = "Bark ratio",
}

/**
 * What the national list tells of a tree species: its name, inventory code, group, wood or bark.
 * @customfunction SPECIESOF
 * @param species Common name or inventory code of the species.
 * @param [fact] Fact wanted: Name, FIA code, Kind, Group, Specific gravity, Green moisture pct, Green lb per ft3 or Bark ratio. Left out: Name.
 * @returns A text or a number, in the shape that was given.
 */
export function speciesOf(species: any[][], fact?: FactOfSpecies): any[][] {
  return answered(() => {
    const asked = chosenOr("Fact", fact, speciesFacts, commonName);
    return eachCell({ found: speciesReading(species, (one) => asked.of(one)) }, ({ found }) => found);
  });
}

/**
 * What keeps each line of your list of species from meaning one of the national list, in one plain sentence; blank when nothing does.
 * @customfunction CHECKSPECIES
 * @param name Common name of each species.
 * @param [fia_code] Inventory code of each species, where the name alone does not tell it. Left out: none.
 * @returns A sentence or a blank for each line, in the shape that was given.
 */
export function checkSpecies(name: any[][], fia_code?: any[][]): any[][] {
  return checkCells([name, fia_code], ([called, coded]) =>
    isNothing(called) && isNothing(coded) ? "" : problemWith({ name: textIn(called), code: textIn(coded) }),
  );
}

/**
 * What looks wrong with the heights of each tree of a tally, in one plain sentence; blank when nothing does.
 * @customfunction CHECKHEIGHTS
 * @param dbh Diameter at breast height of each tree, in inches.
 * @param logs Merchantable height of each tree, in 16-foot logs and half logs.
 * @param height Total height of each tree, in feet.
 * @param [measured] Height that was measured: Logs, Total height or Both. Left out: Logs.
 * @returns A sentence or a blank for each row, in the shape that was given.
 */
export function checkHeights(dbh: any[][], logs: any[][], height: any[][], measured?: string): any[][] {
  return checkCells([dbh, logs, height], ([diameter, count, tall]) =>
    checkHeight(
      {
        dbh: numberIn(diameter, "DBH"),
        logs: numberIn(count, "Logs"),
        height: numberIn(tall, "Total height"),
      },
      chosenOr("Height measured", measured, heightsMeasured, byLogs),
    ),
  );
}

const isNothing = (cell: unknown) => cell === 0 || blank(cell);
const textIn = (cell: unknown) => (isNothing(cell) ? undefined : textOf(cell).slice(0, 100));
const numberIn = (cell: unknown, what: string) =>
  isNothing(cell) ? undefined : boundedNumber(cell, what, { unit: "" });
