/** What can be worked out of a tape, a stick and an angle. */
export const measurements = [
  { id: "height", title: "Height of a tree" },
  { id: "girth", title: "DBH from the girth" },
  { id: "bark", title: "Diameter inside bark" },
  { id: "formClass", title: "Form class" },
  { id: "stick", title: "Marks of a Biltmore stick" },
] as const;

export type Measurement = (typeof measurements)[number]["id"];

/** What is typed on the view, as typed. */
export interface MeasureForm {
  readonly what: Measurement;
  /** Where the top reading was taken: the tip gives total height, the last log gives logs. */
  readonly sighted: "tip" | "logs";
  readonly scale: string;
  readonly distance: string;
  readonly top: string;
  readonly base: string;
  readonly slope: string;
  readonly girth: string;
  readonly species: string;
  readonly outside: string;
  /** "" follows the species. */
  readonly ratio: string;
  readonly inside: string;
  readonly dbh: string;
  readonly reach: string;
}

export const firstMeasure: MeasureForm = {
  what: "height",
  sighted: "tip",
  scale: "Percent",
  distance: "66",
  top: "",
  base: "",
  slope: "0",
  girth: "",
  species: "",
  outside: "",
  ratio: "",
  inside: "",
  dbh: "",
  reach: "25",
};
