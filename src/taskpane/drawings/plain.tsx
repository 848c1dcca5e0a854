/** A plain outline with the parts around it, for a kind that has no drawing of its own. */
import type { Drawing } from "./drawing";
import { Plate } from "./lines";

const CENTRE = 110;
/** A point on a circle around the outline, the first part on top. */
const around = (index: number, of: number, radius: number): readonly [number, number] => {
  const turn = (2 * Math.PI * index) / of - Math.PI / 2;
  return [Math.round(CENTRE + radius * Math.cos(turn)), Math.round(CENTRE + radius * Math.sin(turn))];
};
export function plainDrawing(parts: readonly string[]): Drawing {
  return {
    picture: <Plate d="M110 50 C150 50 170 80 170 110 C170 140 150 170 110 170 C70 170 50 140 50 110 C50 80 70 50 110 50 Z" />,
    spots: Object.fromEntries(
      parts.map((part, index) => [part, { at: around(index, parts.length, 50), label: around(index, parts.length, 92) }]),
    ),
  };
}
