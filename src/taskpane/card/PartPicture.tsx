/** The drawing of the part with its places numbered, and the names beside it. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { type Drawing, SIZE } from "../drawings/drawing";
import { drawingOf } from "../drawings/index";
import { useDecisionTints } from "../shared/shade";
import type { NumberedPart } from "./group-checks";

const useStyles = makeStyles({
  box: { display: "flex", flexWrap: "wrap", alignItems: "center", gap: "6px 14px" },
  picture: {
    width: "176px",
    height: "176px",
    flexShrink: 0,
    color: tokens.colorNeutralForeground1,
    "--part-body": tokens.colorNeutralBackground6,
    forcedColorAdjust: "none",
    "@media (forced-colors: active)": { color: "CanvasText", "--part-body": "Canvas" },
  },
  names: {
    listStyleType: "none",
    margin: 0,
    padding: 0,
    flex: "1 1 96px",
    display: "flex",
    flexDirection: "column",
    gap: "5px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  name: { display: "flex", alignItems: "center", gap: "6px" },
  number: {
    display: "inline-flex",
    alignItems: "center",
    justifyContent: "center",
    width: "18px",
    height: "18px",
    borderRadius: "50%",
    border: "1px solid transparent",
    boxSizing: "border-box",
    fontSize: "11px",
    fontWeight: tokens.fontWeightSemibold,
    flexShrink: 0,
  },
});
export function PartPicture({ gear, parts }: { gear: string | null; parts: readonly NumberedPart[] }) {
  const styles = useStyles();
  const tints = useDecisionTints();
  if (gear === null || parts.length === 0) return null;
  const drawing = drawingOf(gear);
  if (drawing === undefined) return null;
  return (
    <div className={styles.box}>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${String(SIZE)} ${String(SIZE)}`}
        role="img"
        aria-label={`Line drawing of a ${gear}: ${parts.map(({ number, part }) => `${String(number)} ${part}`).join(", ")}`}
      >
        {drawing.picture}
        {parts.map((part) => (
          <Balloon key={part.part} part={part} drawing={drawing} />
        ))}
      </svg>
      <ol className={styles.names} aria-label="Parts in the drawing">
        {parts.map(({ number, part, decision }) => (
          <li key={part} className={styles.name}>
            <span
              className={styles.number}
              style={{ backgroundColor: tints[decision].fill, color: tints[decision].ink, borderColor: tints[decision].mark }}
            >
              {number}
            </span>
            <span>
              {part}
              <br />
              <b>{decision}</b>
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
function Balloon({ part, drawing }: { part: NumberedPart; drawing: Drawing }) {
  const { fill, ink, mark } = useDecisionTints()[part.decision];
  const spot = drawing.spots[part.part];
  if (spot === undefined) return null;
  const [x, y] = spot.at;
  const [labelX, labelY] = spot.label;
  return (
    <g aria-hidden="true">
      <path d={`M${String(x)} ${String(y)} L${String(labelX)} ${String(labelY)}`} stroke="currentColor" strokeWidth={1} />
      <circle cx={x} cy={y} r={3.5} fill={mark} />
      <circle cx={labelX} cy={labelY} r={11} fill={fill} stroke={mark} strokeWidth={1.5} />
      <text x={labelX} y={labelY + 5} textAnchor="middle" fontSize={14} fontWeight={600} fill={ink}>
        {part.number}
      </text>
    </g>
  );
}
