/** The services beside the workbook that the client library calls: worksheet functions, ribbon commands, the runtime's own state. */
import { invalidArgument, notModelled } from "../../book/errors";
import type { Invocations } from "../invocations";
import { HostObject } from "../protocol/object";
import type { HostState } from "../protocol/state";

/** What the runtime remembers: whether the pane shows, and whether the add-in starts with the workbook. */
export interface RuntimeState {
  visibility: "Inactive" | "Background" | "Visible";
  startup: "Inactive" | "Background" | "Visible";
}
export function serviceNamed(state: HostState, name: string, invocations: Invocations, runtime: RuntimeState): HostObject {
  switch (name) {
    case "Microsoft.ExcelServices.CustomFunctions":
      return new CustomFunctionsService(state, invocations);
    case "Microsoft.InternalService.AddinInternalService":
      return new AddinInternalService(state);
    case "Microsoft.AppRuntime.AppRuntimeService":
      return new AppRuntimeService(state, runtime);
    case "Microsoft.AppRuntime.AppRuntimePersistenceService":
      return new AppRuntimePersistenceService(state, runtime);
    default:
      throw notModelled(`the service ${name}`);
  }
}
class CustomFunctionsService extends HostObject {
  readonly type = "CustomFunctions";
  readonly scalars = [];
  private readonly invocations: Invocations;

  constructor(state: HostState, invocations: Invocations) {
    super(state);
    this.invocations = invocations;
  }

  _SetOsfControlContainerReadyForCustomFunctions(): null {
    return null;
  }

  _GetEnabledFeatures(): unknown[] {
    return [];
  }

  SetInvocationResults(results: { id: number; value: unknown; failed: boolean; errorCode?: number }[]): null {
    for (const { id, value, failed, errorCode } of results) this.invocations.settle(id, !failed, value, errorCode);
    return null;
  }

  SetInvocationArrayResults(results: [id: number, ok: boolean, value: unknown, errorCode?: number][]): null {
    for (const [id, ok, value, errorCode] of results) this.invocations.settle(id, ok, value, errorCode);
    return null;
  }
}
class AddinInternalService extends HostObject {
  readonly type = "AddinInternalService";
  readonly scalars = [];

  NotifyActionHandlerReady(): null {
    return null;
  }
}
class AppRuntimeService extends HostObject {
  readonly type = "AppRuntimeService";
  readonly scalars = [];
  private readonly runtime: RuntimeState;

  constructor(state: HostState, runtime: RuntimeState) {
    super(state);
    this.runtime = runtime;
  }

  GetAppRuntimeState(): string {
    return this.runtime.visibility;
  }

  SetAppRuntimeState(visibility: string): null {
    this.runtime.visibility = known(visibility, "AppRuntimeService.setAppRuntimeState");
    return null;
  }
}
class AppRuntimePersistenceService extends HostObject {
  readonly type = "AppRuntimePersistenceService";
  readonly scalars = [];
  private readonly runtime: RuntimeState;

  constructor(state: HostState, runtime: RuntimeState) {
    super(state);
    this.runtime = runtime;
  }

  GetAppRuntimeStartState(): string {
    return this.runtime.startup;
  }

  SetAppRuntimeStartState(startup: string): null {
    this.runtime.startup = known(startup, "AppRuntimePersistenceService.setAppRuntimeStartState");
    return null;
  }
}
function known(given: string, location: string): RuntimeState["visibility"] {
  const found = (["Inactive", "Background", "Visible"] as const).find((state) => state === given);
  if (!found) throw invalidArgument(undefined, location);
  return found;
}
