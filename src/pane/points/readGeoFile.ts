import { gpx, kml } from "@tmcw/togeojson";
import { InvalidInput } from "../../core/basis/problem";
import type { Place } from "../../core/cruise/localPlane";
import type { OutlineReading } from "./outlineReading";
import { placesToMap } from "./placesToMap";

/** What turns a text into a document; a browser has one of its own. */
export type ParseXml = (text: string) => Document;

type Line = readonly (readonly number[])[];

interface Found {
  readonly polygons: Line[][];
  readonly lines: Line[];
  readonly points: number[][];
}

/**
 * Reads the outline in a GPX, KML or GeoJSON text. A polygon comes first, then a line walked around the tract, then
 * single points in their order; longitudes come before latitudes in all of them.
 *
 * @throws InvalidInput when the text is none of these, or holds no outline or more than one
 */
export function readGeoFile(text: string, parseXml: ParseXml): OutlineReading {
  const { name, data } = text.trimStart().startsWith("<")
    ? ofXml(text, parseXml)
    : { name: "GeoJSON", data: ofJson(text) };
  const found: Found = { polygons: [], lines: [], points: [] };
  gather(data, found);
  const { polygons, lines, points } = found;

  refuseMany(name, polygons.length, "outlines");
  const [polygon] = polygons;
  if (polygon) {
    const [outer = [], ...holes] = polygon;
    return placesToMap(outer.map(placeOf), `${name} polygon`, { holes: holes.map((hole) => hole.map(placeOf)) });
  }
  refuseMany(name, lines.length, "tracks");
  const [line] = lines;
  if (line) return placesToMap(line.map(placeOf), `${name} track`, { walked: true });
  if (points.length > 0) return placesToMap(points.map(placeOf), `${name} points, in their order`);
  throw new InvalidInput(`This ${name} text holds no outline, no track and no points.`);
}

function ofXml(text: string, parseXml: ParseXml): { readonly name: string; readonly data: unknown } {
  const xml = readXml(text, parseXml);
  const root = xml.documentElement.localName.toLowerCase();
  if (root === "gpx") return { name: "GPX", data: gpx(xml) };
  if (root === "kml") return { name: "KML", data: kml(xml) };
  throw new InvalidInput(`This text is neither GPX nor KML: it begins with <${root}>.`);
}

function readXml(text: string, parseXml: ParseXml): Document {
  const broken = "This text begins like GPX or KML but is not whole. Copy all of it, from <?xml to the last >.";
  let xml: Document;
  try {
    xml = parseXml(text.trim());
  } catch {
    throw new InvalidInput(broken);
  }
  if (xml.getElementsByTagName("parsererror").length > 0) throw new InvalidInput(broken);
  return xml;
}

function ofJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new InvalidInput(
      "This text begins like GeoJSON but is not whole. Copy all of it, from the first { to the last }.",
    );
  }
}

/** Walks through whatever a GeoJSON text holds; what is not of a known shape is passed over. */
function gather(data: unknown, found: Found): void {
  if (typeof data !== "object" || data === null) return;
  const { type, features, geometry, geometries, coordinates } = data as Record<string, unknown>;
  for (const list of [features, geometries]) if (Array.isArray(list)) list.forEach((one) => gather(one, found));
  if (geometry) gather(geometry, found);
  if (!Array.isArray(coordinates)) return;
  switch (type) {
    case "Polygon":
      return void found.polygons.push(coordinates as Line[]);
    case "MultiPolygon":
      return void found.polygons.push(...(coordinates as Line[][]));
    case "LineString":
      return void found.lines.push(coordinates as Line);
    case "MultiLineString":
      return void found.lines.push((coordinates as Line[]).flat());
    case "Point":
      return void found.points.push(coordinates as number[]);
    case "MultiPoint":
      return void found.points.push(...(coordinates as number[][]));
  }
}

function refuseMany(name: string, count: number, what: string): void {
  if (count > 1)
    throw new InvalidInput(`This ${name} text holds ${count} ${what}. Paste the one that goes around the tract.`);
}

function placeOf(pair: readonly number[]): Place {
  const [longitude, latitude] = pair;
  if (typeof longitude !== "number" || typeof latitude !== "number")
    throw new InvalidInput("A corner of this text is no pair of numbers, longitude then latitude.");
  return { latitude, longitude };
}
