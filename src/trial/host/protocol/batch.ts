/** Works off one batch: object paths are followed in the order in which actions need them, each once. */
import { HostError, notModelled } from "../../book/errors";
import { callMember, readMember, setMember } from "./members";
import { type Found, HostObject, NULL_OBJECT } from "./object";
import { describe, project } from "./project";
import type { HostState } from "./state";
import { type Action, ACTION, type ArgumentInfo, type ObjectPath, PATH, type RequestBody, type ResponseBody } from "./wire";

export interface Roots {
  root: HostObject;
  service(name: string): HostObject;
}
export async function runBatch(state: HostState, roots: Roots, body: RequestBody): Promise<ResponseBody> {
  const batch = new Batch(state, roots, body);
  const response: ResponseBody = { Results: [], TraceIds: [] };
  for (const [index, action] of body.Actions.entries()) {
    try {
      const value = await batch.perform(action);
      if (action.ActionType === ACTION.trace) response.TraceIds.push(action.Id);
      response.Results.push({ ActionId: action.Id, Value: value ?? null });
    } catch (error) {
      response.Error = failureOf(error, index);
      break;
    }
  }
  return response;
}
function failureOf(error: unknown, index: number): NonNullable<ResponseBody["Error"]> {
  const known = error instanceof HostError ? error : new HostError("GeneralException", `The stand-in host failed: ${String(error)}`);
  if (!(error instanceof HostError)) console.error(error);
  return { Code: known.code, Message: known.message, Location: known.location, ActionIndex: index, HttpStatusCode: 400 };
}
class Batch {
  private readonly state: HostState;
  private readonly roots: Roots;
  private readonly paths: Record<string, ObjectPath>;
  private readonly followed = new Map<number, Found<HostObject>>();

  constructor(state: HostState, roots: Roots, body: RequestBody) {
    this.state = state;
    this.roots = roots;
    this.paths = body.ObjectPaths;
  }

  async perform(action: Action): Promise<unknown> {
    if (action.ActionType === ACTION.trace) return null;
    const object = this.follow(action.ObjectPathId);
    switch (action.ActionType) {
      case ACTION.instantiate:
        return describe(object);
      case ACTION.query:
      case ACTION.queryAsJson:
        // What is read in the same batch as it is written is calculated in between.
        await this.state.calculate();
        return project(object, action.QueryInfo ?? {});
      case ACTION.method:
        return object === NULL_OBJECT ? null : this.call(object, action);
      case ACTION.setProperty:
        return setMember(object, action.Name, this.args(action.ArgumentInfo)[0]);
      case ACTION.update:
        for (const [name, value] of Object.entries(action.ObjectState ?? {}))
          setMember(object, name.charAt(0).toUpperCase() + name.slice(1), value);
        return null;
      default:
        throw notModelled(`action type ${String(action.ActionType)} (${action.Name})`);
    }
  }

  private async call(object: HostObject, action: Action): Promise<unknown> {
    if (action.Name === "_KeepReference") {
      this.state.track(object);
      return null;
    }
    const event = /^_(?:Unr|R)egister(\w+)Event$/.exec(action.Name)?.[1];
    if (event !== undefined && object.events.includes(event)) return null;
    const result: unknown = await callMember(object, action.Name, this.args(action.ArgumentInfo));
    return result instanceof HostObject ? describe(result) : result;
  }

  private follow(id: number): Found<HostObject> {
    const known = this.followed.get(id);
    if (known !== undefined) return known;
    const path = this.paths[String(id)];
    if (!path) throw new HostError("InvalidObjectPath", `The batch names the object ${String(id)} without saying what it is.`);
    const object = this.evaluate(path);
    this.followed.set(id, object);
    return object;
  }

  private evaluate(path: ObjectPath): Found<HostObject> {
    switch (path.ObjectPathType) {
      case PATH.root:
        return this.roots.root;
      case PATH.service:
        return this.roots.service(path.Name);
      case PATH.reference: {
        const tracked = this.state.tracked.get(path.Name);
        if (!(tracked instanceof HostObject))
          throw new HostError("InvalidReference", "This reference is not valid for the current operation.", "_reference");
        return tracked;
      }
      // A null object keeps a parent id that is no longer sent: it must not be followed.
      case PATH.nullObject:
        return NULL_OBJECT;
      default:
        return this.evaluateChild(path);
    }
  }

  private evaluateChild(path: ObjectPath): Found<HostObject> {
    const parent = this.follow(path.ParentObjectPathId ?? 0);
    if (parent === NULL_OBJECT) return NULL_OBJECT;
    const args = this.args(path.ArgumentInfo);
    let child: unknown;
    if (path.ObjectPathType === PATH.method) child = callMember(parent, path.Name, args);
    else if (path.ObjectPathType === PATH.indexer) child = callMember(parent, "GetItem", args);
    else if (path.ObjectPathType === PATH.property) child = readMember(parent, path.Name);
    else throw notModelled(`object path type ${String(path.ObjectPathType)} (${path.Name})`);
    if (child === NULL_OBJECT || child instanceof HostObject) return child;
    throw new HostError("GeneralException", `${parent.type}.${path.Name} is no object.`);
  }

  private args(info: ArgumentInfo | undefined): unknown[] {
    const ids = info?.ReferencedObjectPathIds;
    return (info?.Arguments ?? []).map((argument, at) => this.resolve(argument, ids?.[at]));
  }

  private resolve(argument: unknown, id: unknown): unknown {
    if (Array.isArray(id) && Array.isArray(argument)) return argument.map((part: unknown, at) => this.resolve(part, id[at]));
    if (typeof id === "number" && id !== 0) return this.follow(id);
    if (argument !== null && typeof argument === "object" && !Array.isArray(argument)) {
      if ("_ObjectPathId" in argument) return this.follow(Number(argument._ObjectPathId));
      return Object.fromEntries(Object.entries(argument).map(([name, value]) => [name, this.resolve(value, 0)]));
    }
    return argument;
  }
}
