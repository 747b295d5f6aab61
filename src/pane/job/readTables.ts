import type { TableContent } from "../../workbook/host";
import {
  log as logHeading,
  plot as plotHeading,
  price as priceHeading,
  sawn as sawnHeading,
  species as speciesHeading,
  tree as treeHeading,
} from "../../workbook/tables";
import type { KnownSpecies } from "../tally/tallyTree";
import { number, positive, text, yes } from "./cells";
import type { SavedBoard, SavedLog, SavedPlot, SavedPrice, SavedTree } from "./job";

/** A new table has one blank row, which is no tree. */
export const treesOf = (table: TableContent): readonly SavedTree[] =>
  table.rows
    .map((row, place) => ({
      row: place,
      plot: text(row[treeHeading.plot]),
      tree: {
        species: text(row[treeHeading.species]),
        dbh: number(row[treeHeading.dbh]) ?? 0,
        logs: number(row[treeHeading.logs]),
        height: positive(row[treeHeading.height]),
        count: number(row[treeHeading.count]) ?? 1,
        cull: number(row[treeHeading.cull]),
        distance: positive(row[treeHeading.distance]),
        note: text(row[treeHeading.note]),
      },
      volume: number(row[treeHeading.volume]),
      wood: number(row[treeHeading.wood]),
      check: text(row[treeHeading.check]),
      accepted: text(row[treeHeading.accepted]),
      stays: /^no$/i.test(text(row[treeHeading.take])),
    }))
    .filter(({ plot, tree }) => plot !== "" || tree.species !== "" || tree.dbh > 0);

export const plotsOf = (table: TableContent): readonly SavedPlot[] =>
  table.rows
    .map((row, place) => ({
      row: place,
      name: text(row[plotHeading.plot]),
      value: row[plotHeading.plot] as string | number,
      visited: yes(row[plotHeading.visited]) || yes(row[plotHeading.none]),
      empty: yes(row[plotHeading.none]),
      left: yes(row[plotHeading.outside]) || text(row[plotHeading.kind]).toLowerCase() === "count",
      size: positive(row[plotHeading.sizeUsed]),
      check: text(row[plotHeading.check]),
      accepted: text(row[plotHeading.accepted]),
    }))
    .filter(({ name }) => name !== "");

export const logsOf = (table: TableContent): readonly SavedLog[] =>
  table.rows
    .map((row, place) => ({
      row: place,
      name: text(row[logHeading.log]),
      log: {
        species: text(row[logHeading.species]),
        smallEnd: number(row[logHeading.smallEnd]) ?? 0,
        length: number(row[logHeading.length]) ?? 0,
        largeEnd: number(row[logHeading.largeEnd]),
        sweep: number(row[logHeading.sweep]),
        deduction: number(row[logHeading.deduction]),
        note: text(row[logHeading.note]),
      },
      second: positive(row[logHeading.second]),
      gross: number(row[logHeading.gross]),
      net: number(row[logHeading.net]),
      lumber: number(row[logHeading.lumber]),
      check: text(row[logHeading.check]),
    }))
    .filter(({ name, log }) => name !== "" || log.smallEnd > 0);

export const boardsOf = (table: TableContent): readonly SavedBoard[] =>
  table.rows
    .map((row, place) => ({
      row: place,
      log: text(row[sawnHeading.log]),
      board: {
        thickness: number(row[sawnHeading.thickness]) ?? 0,
        width: number(row[sawnHeading.width]) ?? 0,
        length: number(row[sawnHeading.length]) ?? 0,
        pieces: positive(row[sawnHeading.pieces]) ?? 1,
        note: text(row[sawnHeading.grade]),
      },
      check: text(row[sawnHeading.check]),
    }))
    .filter(({ board: { thickness, width, length } }) => thickness > 0 || width > 0 || length > 0);

export const pricesOf = (table: TableContent): readonly SavedPrice[] =>
  table.rows.map((row, place) => ({
    row: place,
    product: text(row[priceHeading.product]),
    check: text(row[priceHeading.check]),
  }));

export const speciesOf = (table: TableContent): readonly KnownSpecies[] =>
  table.rows
    .map((row, place) => {
      const [fia, barkRatio] = [positive(row[speciesHeading.fia]), positive(row[speciesHeading.barkRatio])];
      const scientific = text(row[speciesHeading.scientific]);
      return {
        code: text(row[speciesHeading.code]),
        name: text(row[speciesHeading.name]),
        row: place,
        check: text(row[speciesHeading.check]),
        ...(fia !== null && { fia }),
        ...(scientific !== "" && { scientific }),
        ...(barkRatio !== null && { barkRatio }),
      };
    })
    .filter(({ code }) => code !== "");
