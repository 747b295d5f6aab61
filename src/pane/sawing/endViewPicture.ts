import { middleOf, type EndView, type LaidOutline } from "./endView";

const SIDE = 1400; // px, so that paper shows it sharp
const MARGIN = 1.03;

/** The end of the log to scale as a picture for paper: black on white, boards numbered as they are freed. */
export async function endViewPicture({ ends, boards, reach }: EndView): Promise<Uint8Array> {
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = SIDE;
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error("This page cannot draw.");
  const perInch = SIDE / (2 * reach * MARGIN);
  const at = (x: number, y: number) => [SIDE / 2 + x * perInch, SIDE / 2 - y * perInch] as const;
  const outline = ({ corners }: LaidOutline, width: number, fill?: string) => {
    pen.beginPath();
    for (const [x, y] of corners) pen.lineTo(...at(x, y));
    pen.closePath();
    if (fill !== undefined) {
      pen.fillStyle = fill;
      pen.fill();
    }
    pen.lineWidth = width;
    pen.stroke();
  };
  pen.fillStyle = "#FFFFFF";
  pen.fillRect(0, 0, SIDE, SIDE);
  pen.strokeStyle = "#000000";
  ends.forEach((end) => outline(end, end.piece === "Small end" ? 6 : 2));
  for (const board of boards) {
    outline(board, 3, "#F1F1F1");
    const { x, y, room } = middleOf(board);
    pen.fillStyle = "#000000";
    pen.font = `${Math.min(room * 0.8, reach * 0.14) * perInch}px sans-serif`;
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.fillText(String(board.number), ...at(x, y));
  }
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (!blob) throw new Error("This page cannot make a picture.");
  return new Uint8Array(await blob.arrayBuffer());
}
