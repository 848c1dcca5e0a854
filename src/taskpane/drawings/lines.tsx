/** Pens for the line drawings: everything is drawn in the text colour on a light body, so that it works in every theme. */
const LINE = 2;
/** Set by the picture that holds the drawing. */
const BODY = "var(--part-body)";
const EDGE = "currentColor";
/** A bar bent along a path: an edge all round and the body inside. */
export function Bar({ d, width, cap = "butt" }: { d: string; width: number; cap?: "butt" | "round" }) {
  return (
    <g fill="none" strokeLinecap={cap} strokeLinejoin="round">
      <path d={d} stroke={EDGE} strokeWidth={width} />
      <path d={d} stroke={BODY} strokeWidth={width - 2 * LINE} />
    </g>
  );
}
/** A closed outline with a body. */
export function Plate({ d }: { d: string }) {
  return <path d={d} fill={BODY} stroke={EDGE} strokeWidth={LINE} strokeLinejoin="round" />;
}
export function Disc({ x, y, r }: { x: number; y: number; r: number }) {
  return <circle cx={x} cy={y} r={r} fill={BODY} stroke={EDGE} strokeWidth={LINE} />;
}
/** A thin line for latches, threads, stitches. */
export function Thin({ d, dash }: { d: string; dash?: string }) {
  return (
    <path
      d={d}
      fill="none"
      stroke={EDGE}
      strokeWidth={1.5}
      strokeLinecap="round"
      {...(dash === undefined ? {} : { strokeDasharray: dash })}
    />
  );
}
/** A ring seen from the front. */
export function Ring({ x, y, r, width }: { x: number; y: number; r: number; width: number }) {
  return (
    <Bar
      width={width}
      d={`M${String(x - r)} ${String(y)} a${String(r)} ${String(r)} 0 1 1 ${String(2 * r)} 0 a${String(r)} ${String(r)} 0 1 1 ${String(-2 * r)} 0 Z`}
    />
  );
}
/** The small hook at the end of a sling, hanging from a point. */
export function SlingHook({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${String(x)} ${String(y)})`}>
      <Bar width={10} cap="round" d="M0 6 C1 16 17 18 17 33 C17 46 5 51 -3 49 C-13 47 -18 39 -17 31" />
      <Ring x={0} y={0} r={7} width={6} />
      <Thin d="M1 15 L-15 30" />
    </g>
  );
}
