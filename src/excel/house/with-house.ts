import type { ReportRequest } from "../../engine/report/report";
import type { GearTypes } from "../../engine/types/gear-types";
import type { HouseLimits } from "../../engine/rules/house-limits";
import type { ReadRequest } from "../port";

/** House limits are in force as soon as the workbook has their sheet. */
export function withHouse(
  request: Pick<ReadRequest, "basis" | "asOf"> & Partial<Pick<ReadRequest, "choices">>,
  house: HouseLimits | null,
  types: GearTypes | null = null,
): ReportRequest {
  const { basis, asOf, choices } = request;
  return {
    basis: house === null ? basis : [...basis.filter((id) => id !== "house"), "house"],
    asOf,
    ...(choices === undefined ? {} : { choices }),
    ...(house === null ? {} : { house }),
    ...(types === null ? {} : { types }),
  };
}
export function refusedLimits(house: HouseLimits | null): readonly string[] {
  return (house?.refused ?? []).map(({ sentence }) => sentence);
}
