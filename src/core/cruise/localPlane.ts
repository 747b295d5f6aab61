import { M_PER_FOOT } from "../basis/metric";
import { InvalidInput } from "../basis/problem";
import { requireBetween } from "../basis/require";
import type { Source } from "../basis/source";
import { feet } from "../basis/units";
import type { MapPoint } from "./gridPoints";

/** A place on the earth, on the ellipsoid of WGS 84 as satellite receivers give it. */
export interface Place {
  /** North of the equator; south is below 0. [degrees] */
  readonly latitude: number;
  /** East of Greenwich; west is below 0. [degrees] */
  readonly longitude: number;
}

/** Ellipsoid of WGS 84 [1]. */
const EQUATOR_RADIUS = 6_378_137; // m
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);

/** Farther than this from its middle a flat map of a woodlot makes no sense. [ft] */
const FARTHEST = 150_000;
const STEPS_BACK = 12;

type Vector = readonly [x: number, y: number, z: number];

/** A flat map around a place, in feet east and north of it, and the way back. */
export interface LocalPlane {
  readonly origin: Place;
  toMap(place: Place): MapPoint;
  toPlace(point: MapPoint): Place;
}

/**
 * Orthographic projection of the ellipsoid onto the plane that touches it at the origin:
 *
 *     east  = -sin l0 dx + cos l0 dy
 *     north = -sin f0 cos l0 dx - sin f0 sin l0 dy + cos f0 dz
 *
 *     dx dy dz  from the origin to the place, in coordinates from the centre of the earth   [m]
 *     f0, l0    latitude and longitude of the origin
 *
 * Distances from the origin come out short by the square of distance over radius, over 6: less than 1 in 10 million
 * within 3 miles. They are distances at the height of the sea; 3,000 ft up the ground is 1 in 7,000 longer.
 *
 * @throws InvalidInput when the origin or a place is no place on the earth, or a place lies far off
 *
 * [1] WGS 84: a = 6378137 m, 1/f = 298.257223563
 */
export function localPlane(origin: Place): LocalPlane {
  requirePlace(origin);
  const [latitude, longitude] = [radians(origin.latitude), radians(origin.longitude)];
  const [sinLat, cosLat, sinLon, cosLon] = [
    Math.sin(latitude),
    Math.cos(latitude),
    Math.sin(longitude),
    Math.cos(longitude),
  ];
  const middle = fromCentre(origin);

  const toMap = (place: Place): MapPoint => {
    requirePlace(place);
    const [x, y, z] = fromCentre(place).map((one, axis) => one - (middle[axis] ?? 0)) as unknown as Vector;
    const east = -sinLon * x + cosLon * y;
    const north = -sinLat * cosLon * x - sinLat * sinLon * y + cosLat * z;
    const up = cosLat * cosLon * x + cosLat * sinLon * y + sinLat * z;
    if (Math.hypot(east, north, up) > FARTHEST * M_PER_FOOT) {
      throw new InvalidInput(
        `The corners lie more than ${Math.round(FARTHEST / 5280)} miles apart. Are latitude and longitude in the right order?`,
      );
    }
    return { east: feet(east / M_PER_FOOT), north: feet(north / M_PER_FOOT) };
  };

  /** Step by step: the place that the miss points to, on a sphere as curved as the ellipsoid is here. */
  const toPlace = (point: MapPoint): Place => {
    const strength = 1 - ECCENTRICITY_SQUARED * sinLat ** 2;
    const acrossMeridian = EQUATOR_RADIUS / Math.sqrt(strength);
    const alongMeridian = (acrossMeridian * (1 - ECCENTRICITY_SQUARED)) / strength;
    let place = origin;
    for (let step = 0; step < STEPS_BACK; step += 1) {
      const here = toMap(place);
      const [east, north] = [(point.east - here.east) * M_PER_FOOT, (point.north - here.north) * M_PER_FOOT];
      if (Math.hypot(east, north) < 1e-6) break;
      place = {
        latitude: place.latitude + degrees(north / alongMeridian),
        longitude: place.longitude + degrees(east / (acrossMeridian * cosLat)),
      };
    }
    return place;
  };

  return { origin, toMap, toPlace };
}

/** Coordinates from the centre of the earth, on the ellipsoid. [m] */
function fromCentre({ latitude, longitude }: Place): Vector {
  const [phi, lambda] = [radians(latitude), radians(longitude)];
  const radius = EQUATOR_RADIUS / Math.sqrt(1 - ECCENTRICITY_SQUARED * Math.sin(phi) ** 2);
  return [
    radius * Math.cos(phi) * Math.cos(lambda),
    radius * Math.cos(phi) * Math.sin(lambda),
    radius * (1 - ECCENTRICITY_SQUARED) * Math.sin(phi),
  ];
}

function requirePlace({ latitude, longitude }: Place): void {
  requireBetween("Latitude", latitude, -85, 85, "degrees");
  requireBetween("Longitude", longitude, -180, 180, "degrees");
}

const radians = (angle: number) => (angle * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;

export const sources: readonly Source[] = [
  {
    author: "U.S. National Imagery and Mapping Agency",
    year: "2000",
    title: "Department of Defense World Geodetic System 1984, TR8350.2",
    where:
      "defining parameters of the ellipsoid; the same as in Karney's GeographicLib, against which the map is tested",
    standing: "computed",
  },
];
