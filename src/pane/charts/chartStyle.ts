/** How every chart stands in the pane: on its ground, in its type. */
export const chartStyle = { background: "transparent", fontSize: "12px", fontFamily: "inherit" } as const;
