/** A part of the pane that is fetched after the first load, and at the latest when it is opened. */
import { Component, type ComponentType, lazy, type ReactNode, Suspense } from "react";
import { Notice } from "./Notice";

export interface Later<P> {
  readonly View: ComponentType<P>;
  /** Fetches the part, so that it is there when it is opened. */
  readonly fetch: () => Promise<void>;
}
export function later<P extends object>(load: () => Promise<ComponentType<P>>): Later<P> {
  let Here: ComponentType<P> | null = null;
  const fetch = async (): Promise<ComponentType<P>> => (Here ??= await load());
  const Lazy = lazy(async () => ({ default: (await fetch()) as ComponentType<object> }));
  return {
    View: (props: P) =>
      Here === null ? (
        <Fetched>
          <Lazy {...props} />
        </Fetched>
      ) : (
        <Here {...props} />
      ),
    fetch: async () => {
      await fetch();
    },
  };
}
function Fetched({ children }: { children: ReactNode }) {
  return (
    <NotFetched>
      <Suspense
        fallback={
          <p role="status" style={{ margin: 0, padding: "12px" }}>
            Opening
          </p>
        }
      >
        {children}
      </Suspense>
    </NotFetched>
  );
}
/** A part that cannot be fetched is told in a sentence; the rest of the pane goes on. */
class NotFetched extends Component<{ children: ReactNode }, { failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return (
      <div style={{ padding: "12px" }}>
        <Notice intent="error" title="This part of the pane could not be fetched.">
          Check the connection, then close the pane and open it again. Nothing was changed.
        </Notice>
      </div>
    );
  }
}
