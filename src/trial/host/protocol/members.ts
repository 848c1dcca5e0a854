/** Reaching a member of an object by the name it has on the wire. */
import { invalidArgument, notModelled } from "../../book/errors";
import { type Found, type HostObject, NULL_OBJECT } from "./object";

/** The wire names members in PascalCase, or with an underscore for the library's own. */
const WIRE_NAME = /^_?[A-Z]\w*$/;
function requireMember(object: HostObject, name: string): void {
  if (!WIRE_NAME.test(name) || !(name in object)) throw notModelled(`${object.type}.${name}`);
}
export function readMember(object: HostObject, name: string): unknown {
  requireMember(object, name);
  return (object as unknown as Record<string, unknown>)[name];
}
export function callMember(object: HostObject, name: string, args: unknown[]): unknown {
  requireMember(object, name);
  const method = (object as unknown as Record<string, unknown>)[name];
  if (typeof method !== "function") throw notModelled(`${object.type}.${name}()`);
  return (method as (...given: unknown[]) => unknown).apply(object, args);
}
export function setMember(object: Found<HostObject>, name: string, value: unknown): null {
  if (object === NULL_OBJECT) throw invalidArgument("The object isn't there, so that nothing can be set on it.");
  requireMember(object, name);
  if (!canSet(object, name)) throw notModelled(`setting ${object.type}.${name}`);
  (object as unknown as Record<string, unknown>)[name] = value;
  return null;
}
function canSet(object: object, name: string): boolean {
  for (let at: object | null = object; at !== null; at = Object.getPrototypeOf(at) as object | null) {
    const found = Object.getOwnPropertyDescriptor(at, name);
    if (found) return found.set !== undefined;
  }
  return false;
}
