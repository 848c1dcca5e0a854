import type { Report } from "./run.d.mts";

export function summary(report: Report, examples?: number): string;
export function notHeld(report: Report): string[];
