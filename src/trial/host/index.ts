export { Host, MINIMUM_REQUIREMENTS } from "./host";
export type { Carrier, HostOptions, RequestRecord } from "./host";
export { HostError } from "./errors";
export type { InvocationResult } from "./invocations";
export type { Answer, Entry, RequestBody, ResponseBody } from "./wire";
export { readEntry } from "./entry";
export { showCell } from "./show";
export { filterRows } from "./filter";
export { addressOf, parseBox } from "./address";
