/** Shape of a drawing: a picture in a square of 220, and where its parts stand. */
import type { ReactNode } from "react";

export type Point = readonly [x: number, y: number];
export interface Spot {
  /** Where the leader line touches the part. */
  readonly at: Point;
  /** Where the number stands. */
  readonly label: Point;
}
export interface Drawing {
  readonly picture: ReactNode;
  /** By the part names of the gear kind and of its checks. */
  readonly spots: Readonly<Record<string, Spot>>;
}
export const SIZE = 220;
