import { describe, expect, it } from "vitest";
import { outlineAcres } from "../../../src/core/cruise/outline";
import { readAngles } from "../../../src/pane/points/readAngles";
import { readCorners } from "../../../src/pane/points/readCorners";

const square = "0,0\n660,0\n660,660\n0,660";

describe("corners measured from one corner", () => {
  it("are feet as they look: ten chains by ten are 10 acres", () => {
    const { corners, source, origin } = readCorners(square, "looks");
    expect(outlineAcres(corners)).toBeCloseTo(10, 9);
    expect([source, origin]).toEqual(["Feet from a corner", undefined]);
  });

  it.each([
    ["chains", "0 0\n10 0\n10 10\n0 10", 10],
    ["meters", "0\t0\n200\t0\n200\t200\n0\t200", 4 / 0.40468564224],
    ["feet", "corner,east,north\n1,0,0\n2,660,0\n3,660,660\n4,0,660\n5,0,0", 10],
    ["feet", "A; 0; 0\nB; 660; 0\nC; 660; 660\nD; 0; 660", 10],
  ] as const)("in %s, %j", (unit, text, acres) => {
    expect(outlineAcres(readCorners(text, unit).corners)).toBeCloseTo(acres, 6);
  });

  it("name the line that cannot be read", () => {
    expect(() => readCorners("0,0\n660", "feet")).toThrow('Line 2 needs two numbers, east and north. It has "660".');
    expect(() => readCorners("0 0\n1,320 0\n660 660", "feet")).toThrow("Leave the comma out of 1,320.");
    expect(() => readCorners("1,0,0\n7,660,0\n3,660,660", "feet")).toThrow(
      "A first number of three should count the corners: 1, 2, 3.",
    );
    expect(() => readCorners("north of the road", "feet")).toThrow("There are no numbers here.");
    expect(() => readCorners("0,0\n660,660\n660,0\n0,660", "feet")).toThrow("cross each other");
    expect(() => readCorners("0,0\n660,660", "feet")).toThrow("An outline needs 3 corners or more. You have 2.");
  });
});

describe("corners by latitude and longitude", () => {
  const degrees = "44.123400, -89.567800\n44.123400, -89.565800\n44.125400, -89.565800\n44.125400, -89.567800";

  it("are known by their looks, and lie on a map whose 0, 0 is their south-west", () => {
    const { corners, source, origin } = readCorners(degrees, "looks");
    expect(source).toBe("Latitude and longitude");
    expect(origin).toEqual({ latitude: 44.1234, longitude: -89.5678 });
    expect(corners[0]).toEqual({ east: expect.closeTo(0, 6) as number, north: expect.closeTo(0, 6) as number });
    expect(corners.every(({ east, north }) => east > -1 && north > -1)).toBe(true);
  });

  it("are taken for what they are said to be, whatever they look like", () => {
    const southWest = { latitude: 44.1, longitude: -89.1 };
    expect(readCorners("44.1 -89.1\n44.1 -89.09\n44.11 -89.09", "degrees").origin).toEqual(southWest);
    expect(readCorners("44.1234 -89.1234\n80.1234 -89.1234\n80.1234 -20.1234", "feet").origin).toBeUndefined();
  });

  it.each([
    ["44°07'24.24\"N 89°34'04.08\"W", 44.1234, -89.5678],
    ["44° 07' 24.24\" N, 89° 34' 04.08\" W", 44.1234, -89.5678],
    ["N 44 07.404 W 089 34.068", 44.1234, -89.5678],
    ["N44.1234 W89.5678", 44.1234, -89.5678],
    ["44.1234N, 89.5678W", 44.1234, -89.5678],
    ["89.5678 W 44.1234 N", 44.1234, -89.5678],
    ["44.1234°, -89.5678°", 44.1234, -89.5678],
    ["-33.5, 150.25", -33.5, 150.25],
    ["33°30'S 150°15'E", -33.5, 150.25],
  ])("%s", (line, latitude, longitude) => {
    const place = readAngles(line, 1);
    expect(place.latitude).toBeCloseTo(latitude, 9);
    expect(place.longitude).toBeCloseTo(longitude, 9);
  });

  it("say which line is none", () => {
    expect(() => readAngles("44°07'N", 3)).toThrow(
      "Line 3 needs a latitude and a longitude, such as 44.12345, -89.56789.",
    );
    expect(() => readAngles("44°77'N 89°W", 3)).toThrow("Line 3 needs a latitude and a longitude");
    expect(() => readCorners("-89.5678, 44.1234\n-89.5658, 44.1234\n-89.5658, 44.1254", "degrees")).toThrow(
      "Latitude should be between -85 and 85 degrees. You have -89.5678.",
    );
  });
});
