/** The messages between the client library and the workbook: what a batch and its answer look like. */

export const PATH = { root: 1, service: 2, method: 3, property: 4, indexer: 5, reference: 6, nullObject: 7 } as const;
export const ACTION = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5, queryAsJson: 7, update: 9 } as const;
/** Request flag of `Excel.run({ delayForCellEdit: true })`: wait until the user leaves the cell instead of failing. */
export const DELAY_FOR_CELL_EDIT = 64;
/** Limit of a request and of a response in Excel on the web. */
export const PAYLOAD_LIMIT = 5 * 1024 * 1024;
export interface ArgumentInfo {
  Arguments?: unknown[];
  /** Where not zero, the argument in that place is the object with this path id. */
  ReferencedObjectPathIds?: unknown[];
}
export interface ObjectPath {
  Id: number;
  ObjectPathType: number;
  Name: string;
  ParentObjectPathId?: number;
  ArgumentInfo?: ArgumentInfo;
}
export interface QueryInfo {
  Select?: string[];
  Expand?: string[];
  Top?: number;
  Skip?: number;
}
export interface Action {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: ArgumentInfo;
  QueryInfo?: QueryInfo;
  ObjectState?: Record<string, unknown>;
}
export interface RequestBody {
  Actions: Action[];
  ObjectPaths: Record<string, ObjectPath>;
}
export interface ResponseError {
  Code: string;
  Message: string;
  Location: string;
  ActionIndex: number;
  HttpStatusCode: number;
}
export interface ResponseBody {
  Results: { ActionId: number; Value: unknown }[];
  TraceIds: number[];
  Error?: ResponseError;
}
/** The answer to one request as a carrier passes it on: a body, or a failure of the request as a whole. */
export type Answer = { ok: true; text: string } | { ok: false; code: string; message: string };
/** A message from the workbook to the add-in: an event or a call of a worksheet function. */
export interface Entry {
  messageCategory: number;
  messageType: number;
  targetId: string;
  message: string;
}
