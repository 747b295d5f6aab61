import fc from "fast-check";
import geodesic from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import type { MapPoint } from "../../../src/core/cruise/gridPoints";
import { localPlane, type Place } from "../../../src/core/cruise/localPlane";
import { outlineAcres } from "../../../src/core/cruise/outline";
import { walkLeg } from "../../../src/core/cruise/walkLeg";

/** Karney's geodesics on the same ellipsoid, which share no code with the map. */
const earth = geodesic.Geodesic.WGS84;
const METERS_PER_FOOT = 0.3048;
const SQUARE_METERS_PER_ACRE = 43_560 * METERS_PER_FOOT ** 2;

const origins: fc.Arbitrary<Place> = fc.record({
  latitude: fc.double({ min: -60, max: 70, noNaN: true }),
  longitude: fc.double({ min: -179, max: 179, noNaN: true }),
});
const away = fc.record({
  bearing: fc.double({ min: 0, max: 360, noNaN: true }),
  meters: fc.double({ min: 1, max: 3000, noNaN: true }),
});

const placeAt = (origin: Place, { bearing, meters }: { readonly bearing: number; readonly meters: number }): Place => {
  const { lat2 = NaN, lon2 = NaN } = earth.Direct(origin.latitude, origin.longitude, bearing, meters);
  return { latitude: lat2, longitude: lon2 };
};

describe("the flat map of a tract", () => {
  it("has distances from its origin within 1 in 10 million of the geodesic, and its bearings", () => {
    fc.assert(
      fc.property(origins, away, (origin, way) => {
        const point = localPlane(origin).toMap(placeAt(origin, way));
        const leg = walkLeg({ east: feet(0), north: feet(0) }, point);
        expect(Math.abs((leg?.distance ?? 0) * METERS_PER_FOOT - way.meters)).toBeLessThan(1e-6 + way.meters * 1e-7);
        const turned = Math.abs((leg?.bearing ?? 0) - way.bearing) % 360;
        expect(Math.min(turned, 360 - turned) * way.meters).toBeLessThan(0.01);
      }),
    );
  });

  it("has distances between two points of a tract within 3 in 10 million", () => {
    fc.assert(
      fc.property(origins, away, away, (origin, one, other) => {
        const plane = localPlane(origin);
        const [from, to] = [placeAt(origin, one), placeAt(origin, other)];
        const { s12 = NaN } = earth.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
        const distance = walkLeg(plane.toMap(from), plane.toMap(to))?.distance ?? 0;
        expect(Math.abs(distance * METERS_PER_FOOT - s12)).toBeLessThan(1e-4 + s12 * 3e-7);
      }),
    );
  });

  it("has the acres of the polygon on the ellipsoid within 3 in 10 million", () => {
    fc.assert(
      fc.property(origins, fc.double({ min: 100, max: 2000, noNaN: true }), (origin, size) => {
        const bearings = [10, 80, 170, 200, 290];
        const places = bearings.map((bearing) => placeAt(origin, { bearing, meters: size }));
        const polygon = earth.Polygon(false);
        places.forEach(({ latitude, longitude }) => polygon.AddPoint(latitude, longitude));
        const { area = NaN } = polygon.Compute(false, true);
        const acres = outlineAcres(places.map((place) => localPlane(origin).toMap(place)));
        expect(Math.abs(acres / (Math.abs(area) / SQUARE_METERS_PER_ACRE) - 1)).toBeLessThan(3e-7);
      }),
    );
  });

  it("leads back to the same place, to a hundredth of an inch", () => {
    fc.assert(
      fc.property(origins, away, (origin, way) => {
        const plane = localPlane(origin);
        const place = placeAt(origin, way);
        const back = plane.toPlace(plane.toMap(place));
        const { s12 = NaN } = earth.Inverse(place.latitude, place.longitude, back.latitude, back.longitude);
        expect(s12).toBeLessThan(0.00025);
      }),
    );
  });

  it("puts its origin at 0, 0", () => {
    const { east, north }: MapPoint = localPlane({ latitude: 44, longitude: -89 }).toMap({
      latitude: 44,
      longitude: -89,
    });
    expect([east, north]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  it("says what is no place, or no tract", () => {
    const plane = localPlane({ latitude: 44, longitude: -89 });
    expect(() => localPlane({ latitude: -89, longitude: 44 })).toThrow(
      "Latitude should be between -85 and 85 degrees. You have -89.",
    );
    expect(() => plane.toMap({ latitude: 45, longitude: -89 })).toThrow("more than 28 miles apart");
    expect(() => plane.toMap({ latitude: 44, longitude: NaN })).toThrow("Longitude needs a number");
  });
});
