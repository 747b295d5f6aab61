import { html, nothing } from "lit";
import { diameterChart, diameterFinding } from "../charts/diameterChart";
import { pointChart, pointFinding } from "../charts/pointChart";
import { chartFigure } from "../components/chartFigure";
import { dataTable } from "../components/dataTable";
import { section } from "../components/section";
import { figure } from "../figures";
import { measure, type StandAnswers } from "../job/readStand";

/** How the trees are spread over diameters, and how the points differ. */
export function standCharts({ classes, points, summary }: StandAnswers) {
  const mean = measure(summary, "Basal area");
  return html`
    ${
      classes.length > 0
        ? section(
            "Diameters",
            chartFigure({
              finding: diameterFinding(classes),
              data: classes,
              draw: diameterChart,
              table: dataTable(
                "Trees per acre by diameter class",
                ["DBH class, in", "Trees per acre"],
                classes.map(({ inches, total }) => [String(inches), figure(total, 1)]),
              ),
            }),
          )
        : nothing
    }
    ${
      points.length > 0 && mean
        ? section(
            "Point to point",
            chartFigure({
              finding: pointFinding({ points, mean }),
              data: { points, mean },
              draw: pointChart,
              table: dataTable(
                "What each point says",
                ["Point", "Trees", "Basal area, ft² per acre", "Volume, bf per acre"],
                points.map(({ plot, trees, basalArea, volume }) => [
                  plot,
                  figure(trees),
                  figure(basalArea, 1),
                  figure(volume),
                ]),
              ),
            }),
          )
        : nothing
    }
  `;
}
