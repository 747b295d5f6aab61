import { InvalidInput } from "../../basis/problem";

/** Bailey ecodivisions that the national tables part species by; M stands for the mountains of a division. */
export const divisions: readonly string[] = [
  ...["130", "210", "220", "230", "240", "250", "260", "310", "330", "340"],
  ...["M130", "M210", "M220", "M230", "M240", "M260", "M310", "M330", "M340"],
];

/**
 * The division that a text means. A province, such as 221 or M332, is taken for its division: all but the last digit.
 * Blank means not known, and so the species at large.
 *
 * @throws InvalidInput naming the divisions when none is meant
 */
export function divisionOf(text: string): string {
  const given = text.trim().toUpperCase();
  if (given === "") return "";
  const division = given.replace(/^(M?\d\d)\d$/, "$10");
  if (divisions.includes(division)) return division;
  throw new InvalidInput(
    `Division should be a Bailey ecodivision: ${divisions.join(", ")}. You have "${text.slice(0, 60)}".`,
  );
}
