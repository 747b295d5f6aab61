import { DOMParser } from "@xmldom/xmldom";
import geodesic from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { outlineAcres } from "../../../src/core/cruise/outline";
import { gpxText } from "../../../src/pane/points/gpxText";
import { readGeoFile } from "../../../src/pane/points/readGeoFile";

const parse = (text: string) => new DOMParser().parseFromString(text, "text/xml") as unknown as Document;
const read = (text: string) => readGeoFile(text, parse);

const ring = [
  [-89.5678, 44.1234],
  [-89.5658, 44.1234],
  [-89.5658, 44.1254],
  [-89.5678, 44.1254],
];
/** By Karney's geodesics, which share no code with ours. */
function acresOnEllipsoid(): number {
  const earth = geodesic.Geodesic.WGS84.Polygon(false);
  ring.forEach(([longitude = NaN, latitude = NaN]) => earth.AddPoint(latitude, longitude));
  return Math.abs(earth.Compute(false, true).area ?? NaN) / 4046.8564224;
}
const closed = [...ring, ring[0]];
const polygon = (rings: unknown) =>
  JSON.stringify({ type: "Feature", properties: {}, geometry: { type: "Polygon", coordinates: rings } });
const gpxOf = (inside: string) =>
  `<?xml version="1.0"?><gpx version="1.1" creator="a receiver" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>`;
const points = (element: string) => ring.map(([lon, lat]) => `<${element} lat="${lat}" lon="${lon}"/>`).join("");

describe("an outline from a file", () => {
  const { corners } = read(polygon([closed]));

  it("of GeoJSON is its polygon, in a feature, alone or in a collection", () => {
    expect(corners).toHaveLength(4);
    expect(outlineAcres(corners)).toBeCloseTo(acresOnEllipsoid(), 4);
    expect(read(JSON.stringify({ type: "Polygon", coordinates: [closed] })).corners).toEqual(corners);
    expect(read(`{"type":"FeatureCollection","features":[${polygon([closed])}]}`).corners).toEqual(corners);
  });

  it.each([
    ["a track", `<trk><trkseg>${points("trkpt")}</trkseg></trk>`, "GPX track"],
    ["a route", `<rte>${points("rtept")}</rte>`, "GPX track"],
    ["waypoints", points("wpt"), "GPX points, in their order"],
  ])("of GPX is %s", (_, inside, source) => {
    const reading = read(gpxOf(inside));
    expect(reading.source).toBe(source);
    expect(reading.corners).toEqual(corners);
    expect(reading.origin).toEqual({ latitude: 44.1234, longitude: -89.5678 });
  });

  it("of KML is its polygon", () => {
    const text = `<kml xmlns="http://www.opengis.net/kml/2.2"><Placemark><Polygon><outerBoundaryIs><LinearRing><coordinates>${closed
      .map((pair) => pair?.join(","))
      .join(" ")}</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></kml>`;
    expect(read(text).corners).toEqual(corners);
    expect(read(text).source).toBe("KML polygon");
  });

  it("is without its hole, and says so", () => {
    const inward = (share: number) =>
      closed.map((pair) => [
        -89.5668 + ((pair?.[0] ?? 0) + 89.5668) * share,
        44.1244 + ((pair?.[1] ?? 0) - 44.1244) * share,
      ]);
    const { corners: joined, notes } = read(polygon([closed, inward(0.5)]));
    expect(notes).toEqual([
      "A hole is cut out of the outline, joined to it by a line: the acres are without it, and no point falls inside.",
    ]);
    // Half as wide and half as deep, so a quarter of the land
    expect(outlineAcres(joined)).toBeCloseTo(0.75 * acresOnEllipsoid(), 3);
    expect(() => read(polygon([closed, inward(1.5)]))).toThrow("A hole should lie inside the outline.");
  });

  it("loses the knots of a track, and says so", () => {
    const knot = [
      ...ring.slice(0, 3),
      [-89.5668, 44.1254],
      [-89.5668, 44.12543],
      [-89.56678, 44.12538],
      ...ring.slice(3),
    ];
    const reading = read(
      gpxOf(`<trk><trkseg>${knot.map(([lon, lat]) => `<trkpt lat="${lat}" lon="${lon}"/>`).join("")}</trkseg></trk>`),
    );
    expect(reading.notes).toEqual(["A small loop of the track was cut off."]);
    expect(outlineAcres(reading.corners)).toBeCloseTo(acresOnEllipsoid(), 1);
  });

  it.each([
    ["{", "not whole"],
    ['{"type":"Point","coordinates":["a",1]}', "no pair of numbers"],
    ["{}", "This GeoJSON text holds no outline, no track and no points."],
    [`{"type":"GeometryCollection","geometries":[${polygon([closed])},${polygon([closed])}]}`, "holds 2 outlines"],
    ["<gpx><trk>", "begins like GPX or KML but is not whole"],
    ["<html><body/></html>", "neither GPX nor KML: it begins with <html>"],
    [gpxOf(""), "This GPX text holds no outline"],
    [gpxOf(`<trk><trkseg>${points("trkpt")}</trkseg></trk>`.repeat(2)), "holds 2 tracks"],
    [
      polygon([
        [
          [0, 0],
          [50, 50],
          [0, 50],
        ],
      ]),
      "more than 28 miles apart",
    ],
  ])("refuses %s", (text, says) => {
    expect(() => read(text)).toThrow(says);
  });
});

describe("the points as GPX", () => {
  const walk = ring.map(([longitude = 0, latitude = 0], at) => ({ latitude, longitude, name: `${at + 1}` }));

  it("are read back as they were, as waypoints and as a route", () => {
    const xml = parse(gpxText("Ash & <Elm>", walk));
    for (const element of ["wpt", "rtept"]) {
      const found = [...xml.getElementsByTagName(element)];
      expect(found.map((one) => [Number(one.getAttribute("lon")), Number(one.getAttribute("lat"))])).toEqual(ring);
      expect(found.map((one) => one.getElementsByTagName("name")[0]?.textContent)).toEqual(["1", "2", "3", "4"]);
    }
    expect(xml.getElementsByTagName("metadata")[0]?.textContent).toBe("Ash & <Elm>");
    expect(read(gpxText("North stand", walk)).corners).toHaveLength(4);
  });

  it("have the parts in the order that GPX 1.1 asks for", () => {
    const order = [...(parse(gpxText("a", walk)).documentElement?.childNodes ?? [])]
      .map(({ nodeName }) => nodeName)
      .filter((name) => name !== "#text");
    expect([...new Set(order)]).toEqual(["metadata", "wpt", "rte"]);
    expect(parse(gpxText("a", walk)).documentElement.getAttribute("version")).toBe("1.1");
  });
});
