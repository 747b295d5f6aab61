import type { CornerUnit, OutlineReading } from "./outlineReading";
import { readCorners } from "./readCorners";

/**
 * Reads an outline that was pasted or came from a file: corners as numbers, or GPX, KML or GeoJSON, told by how the
 * text begins. What reads those files is loaded when one is met.
 */
export async function readOutline(text: string, unit: CornerUnit): Promise<OutlineReading> {
  if (!/^\s*[<{]/.test(text)) return readCorners(text, unit);
  const { readGeoFile } = await import("./readGeoFile");
  return readGeoFile(text, (xml) => new DOMParser().parseFromString(xml, "application/xml"));
}
