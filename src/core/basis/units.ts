declare const unit: unique symbol;

/** A number that carries its unit in its type, so that inches cannot be passed where feet are meant. */
export type Measure<Unit extends string> = number & { readonly [unit]: Unit };

export type Inches = Measure<"in">;
export type Feet = Measure<"ft">;
export type SquareFeet = Measure<"ft2">;
export type CubicFeet = Measure<"ft3">;
export type BoardFeet = Measure<"bf">;
export type Acres = Measure<"ac">;
export type Percent = Measure<"%">;
export type Pounds = Measure<"lb">;
export type Fahrenheit = Measure<"F">;
export type Dollars = Measure<"$">;
/** Basal area per acre, and so also the basal area factor of an angle gauge. [ft2/ac] */
export type SquareFeetPerAcre = Measure<"ft2/ac">;
export type PerAcre = Measure<"1/ac">;
export type InchesPerFoot = Measure<"in/ft">;
export type DollarsPerMbf = Measure<"$/MBF">;

export const inches = (value: number) => value as Inches;
export const feet = (value: number) => value as Feet;
export const squareFeet = (value: number) => value as SquareFeet;
export const cubicFeet = (value: number) => value as CubicFeet;
export const boardFeet = (value: number) => value as BoardFeet;
export const acres = (value: number) => value as Acres;
export const percent = (value: number) => value as Percent;
export const pounds = (value: number) => value as Pounds;
export const fahrenheit = (value: number) => value as Fahrenheit;
export const dollars = (value: number) => value as Dollars;
export const squareFeetPerAcre = (value: number) => value as SquareFeetPerAcre;
export const perAcre = (value: number) => value as PerAcre;
export const inchesPerFoot = (value: number) => value as InchesPerFoot;
export const dollarsPerMbf = (value: number) => value as DollarsPerMbf;
