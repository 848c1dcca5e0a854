import { invalidArgument } from "../../book/errors";
import { HostObject } from "../protocol/object";
import type { CalculationMode } from "../protocol/state";

export class Application extends HostObject {
  readonly type = "Application";
  readonly scalars = ["CalculationMode", "CalculationState"];

  get CalculationMode(): CalculationMode {
    return this.state.calculationMode;
  }
  set CalculationMode(given: string) {
    const mode = (["Automatic", "AutomaticExceptTables", "Manual"] as const).find((known) => known === given);
    if (!mode) throw invalidArgument(undefined, "Application.calculationMode");
    this.state.calculationMode = mode;
  }

  get CalculationState(): string {
    return this.state.stale ? "Pending" : "Done";
  }

  async Calculate(kind: string): Promise<null> {
    if (!["Recalculate", "Full", "FullRebuild"].includes(kind)) throw invalidArgument(undefined, "Application.calculate");
    await this.state.calculate(true);
    return null;
  }

  /** Nothing is drawn here before the end of a batch anyway. */
  SuspendScreenUpdatingUntilNextSync(): null {
    return null;
  }

  SuspendApiCalculationUntilNextSync(): null {
    this.state.calculationSuspended = true;
    return null;
  }
}
