const ARROW = 30; // pixels, with the cell's own edges

/** Pixels that a table's heading takes with the arrow over its end, measured as the grid draws it. */
export function headingWidth(heading: string): number {
  const pen = document.createElement("canvas").getContext("2d");
  if (!pen) return 0;
  pen.font = "bold 11pt Arial";
  return Math.ceil(pen.measureText(heading).width) + ARROW;
}
