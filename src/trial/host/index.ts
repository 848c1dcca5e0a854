export { Host } from "./host";
export { MINIMUM_REQUIREMENTS } from "./host";
export type { Carrier } from "./host";
export type { HostOptions } from "./host";
export type { RequestRecord } from "./host";
export { HostError } from "../book/errors";
export type { InvocationResult } from "./invocations";
export type { Answer } from "./protocol/wire";
export type { Entry } from "./protocol/wire";
export type { RequestBody } from "./protocol/wire";
export type { ResponseBody } from "./protocol/wire";
export { readEntry } from "../book/entry";
export { showCell } from "../book/show";
export { filterRows } from "./sheet/filter";
export { addressOf } from "../book/address";
export { parseBox } from "../book/address";

