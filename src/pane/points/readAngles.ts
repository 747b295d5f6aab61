import { InvalidInput } from "../../core/basis/problem";
import type { Place } from "../../core/cruise/localPlane";
import { numberPair } from "./numberPair";

const ANGLE =
  /([NSEW])?\s*([+-]?\d+(?:\.\d+)?)\s*[°º]?\s*(?:(\d+(?:\.\d+)?)\s*['′’]?\s*)?(?:(\d+(?:\.\d+)?)\s*(?:["″”]|'')?\s*)?([NSEW])?/i;

/**
 * Latitude and longitude of a line: in degrees, or with letters and signs as in 44°07'24.2"N 89°34'04"W or
 * N 44 07.403 W 089 34.068. Letters tell which is which; without them latitude comes first.
 *
 * @throws InvalidInput naming the line
 */
export function readAngles(line: string, lineNumber: number, ordinal = 1): Place {
  if (!/[°ºNSEW]/i.test(line)) {
    const [latitude, longitude] = numberPair(line, lineNumber, ordinal, "latitude and longitude");
    return { latitude, longitude };
  }
  const parts = parted(line);
  const angles = parts.map((part) => angleIn(part));
  const latitude = angles.find((angle) => /[NS]/i.test(angle?.letter ?? "")) ?? angles[0];
  const longitude = angles.find((angle) => /[EW]/i.test(angle?.letter ?? "")) ?? angles[1];
  if (angles.length !== 2 || !latitude || !longitude || latitude === longitude) {
    throw new InvalidInput(
      `Line ${lineNumber} needs a latitude and a longitude, such as 44.12345, -89.56789. It has "${line.slice(0, 40)}".`,
    );
  }
  return { latitude: latitude.degrees, longitude: longitude.degrees };
}

/** A line in its two angles: behind the letter that ends the first, before the one that begins the second, or at a comma. */
function parted(line: string): readonly string[] {
  const trimmed = line.trim();
  const ended = /^(.*?[NSEW])\s*[,;]?\s*([+-]?\d.*[NSEW])$/i.exec(trimmed);
  const begun = /^([NSEW].*?)\s*[,;]?\s*([NSEW].*)$/i.exec(trimmed);
  const [, first = "", second = ""] = (/^[NSEW]/i.test(trimmed) ? begun : ended) ?? [];
  if (first !== "") return [first, second];
  return trimmed.split(/[,;\t]\s*|(?<=[°º"″”'′])\s+(?=[+-]?\d)/);
}

function angleIn(part: string): { readonly degrees: number; readonly letter: string } | undefined {
  const found = ANGLE.exec(part.trim());
  if (!found || found[0] !== part.trim()) return undefined;
  const [, before = "", whole = "", minutes = "0", seconds = "0", after = ""] = found;
  if (Number(minutes) >= 60 || Number(seconds) >= 60) return undefined;
  const letter = (before || after).toUpperCase();
  const size = Math.abs(Number(whole)) + Number(minutes) / 60 + Number(seconds) / 3600;
  const below = whole.startsWith("-") || letter === "S" || letter === "W";
  return { degrees: below ? -size : size, letter };
}
