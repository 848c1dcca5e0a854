/** The readings of a size over time as points, with the line between first and last. */
import { tokens } from "@fluentui/react-components";
import type { CheckTrend } from "../../engine/programme/item-history";
import { trendOf } from "../../engine/programme/trend";
import { showDay } from "../shared/days";

const [WIDTH, HEIGHT, EDGE] = [280, 80, 8];
export function TrendPicture({ trend: { check, unit, readings } }: { trend: CheckTrend }) {
  const line = trendOf(readings);
  const [first, last] = [readings[0], readings.at(-1)];
  if (line === null || first === undefined || last === undefined) return null;
  const values = [...readings.map(({ value }) => value), line.at(line.from), line.at(line.to)];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const x = (day: number): number => EDGE + ((day - line.from) / (line.to - line.from)) * (WIDTH - 2 * EDGE);
  const y = (value: number): number => (high === low ? HEIGHT / 2 : HEIGHT - EDGE - ((value - low) / (high - low)) * (HEIGHT - 2 * EDGE));
  const told = `${check}: ${String(first.value)} ${unit} on ${showDay(first.day)}, ${String(last.value)} ${unit} on ${showDay(last.day)}`;
  return (
    <svg
      viewBox={`0 0 ${String(WIDTH)} ${String(HEIGHT)}`}
      role="img"
      aria-label={told}
      style={{ width: "100%", maxWidth: WIDTH, display: "block" }}
    >
      <line
        x1={x(line.from)}
        y1={y(line.at(line.from))}
        x2={x(line.to)}
        y2={y(line.at(line.to))}
        stroke={tokens.colorBrandStroke1}
        strokeWidth={1.5}
      />
      {readings.map(({ day, value }) => (
        <circle key={day} cx={x(day)} cy={y(value)} r={3} fill={tokens.colorNeutralForeground1} />
      ))}
    </svg>
  );
}
