const NARROWEST = 270;
const WIDEST = 500;
const STEP = 16;

/** Lets a person set the pane's width with the mouse, a finger or the arrow keys. */
export function resizable(separator: HTMLElement, pane: HTMLElement, width: number): void {
  const set = (wanted: number) => {
    width = Math.round(Math.min(WIDEST, Math.max(NARROWEST, wanted)));
    pane.style.width = `${width}px`;
    separator.setAttribute("aria-valuenow", String(width));
  };
  separator.setAttribute("aria-valuemin", String(NARROWEST));
  separator.setAttribute("aria-valuemax", String(WIDEST));
  set(width);

  separator.addEventListener("keydown", (event) => {
    const wanted = widthByKey(event.key, width);
    if (wanted === undefined) return;
    event.preventDefault();
    set(wanted);
  });
  separator.addEventListener("pointerdown", (event) => {
    const start = event.clientX + width;
    const follow = (move: PointerEvent) => set(start - move.clientX);
    const stop = () => {
      separator.removeEventListener("pointermove", follow);
      document.body.classList.remove("resizing");
    };
    separator.setPointerCapture(event.pointerId);
    document.body.classList.add("resizing");
    separator.addEventListener("pointermove", follow);
    separator.addEventListener("lostpointercapture", stop, { once: true });
  });
}

/** The pane lies right of the separator: moving left makes it wider. */
function widthByKey(key: string, width: number): number | undefined {
  if (key === "ArrowLeft") return width + STEP;
  if (key === "ArrowRight") return width - STEP;
  if (key === "Home") return NARROWEST;
  if (key === "End") return WIDEST;
  return undefined;
}
