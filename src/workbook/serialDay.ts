/** Days from the serial number 0 of a spreadsheet's calendar back to 1 March of the year 0. */
const DAYS_BEFORE = 693_899;
const DAYS_IN_400_YEARS = 146_097;

/**
 * A serial number of a spreadsheet as a day, such as 2026-10-03. Whole days from 1 March 1900 on; earlier ones a
 * spreadsheet counts wrongly.
 */
export function dayOfSerial(serial: number): string {
  const days = Math.floor(serial) + DAYS_BEFORE;
  const era = Math.floor(days / DAYS_IN_400_YEARS);
  const ofEra = days - era * DAYS_IN_400_YEARS;
  const years = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * years + Math.floor(years / 4) - Math.floor(years / 100));
  const month = Math.floor((5 * ofYear + 2) / 153); // counted from March
  const day = ofYear - Math.floor((153 * month + 2) / 5) + 1;
  const calendarMonth = month < 10 ? month + 3 : month - 9;
  const year = years + era * 400 + (calendarMonth <= 2 ? 1 : 0);
  return `${year}-${String(calendarMonth).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** The serial number of a day written as year, month and day; undefined when there is no such day. */
export function serialOfDay(text: string): number | undefined {
  const [, year, month, day] = (/^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return undefined;
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const years = shifted - era * 400;
  const ofYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const ofEra = years * 365 + Math.floor(years / 4) - Math.floor(years / 100) + ofYear;
  const serial = era * DAYS_IN_400_YEARS + ofEra - DAYS_BEFORE;
  const written = `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return dayOfSerial(serial) === written ? serial : undefined;
}
