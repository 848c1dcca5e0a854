/** What the user has to know now: a failure and its next step, a change by someone else. Stays in sight above the place. */
import { Notice } from "../shared/Notice";
import type { Intentions } from "../state/actions";
import type { Failure, PaneState } from "../state/state";

/** Kinds that are nobody's fault and pass by themselves or with one step in the sheet. */
const MILD: readonly Failure["kind"][] = ["editing", "protected", "no log", "duplicate", "renamed"];
export function Messages({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const { failure, remote, made } = state;
  return (
    <>
      <div role="alert">{failure !== null && <FailureNotice failure={failure} intentions={intentions} />}</div>
      {made !== null && (
        <Notice
          intent="success"
          title={made}
          onDismiss={() => {
            intentions.tell({ kind: "dismiss", what: "made" });
          }}
        />
      )}
      {remote !== null && (
        <Notice
          intent="warning"
          title="Someone else changed the sheet."
          action={{ label: "Read again", onClick: () => void intentions.readAgain() }}
          onDismiss={() => {
            intentions.tell({ kind: "dismiss", what: "remote" });
          }}
        >
          What you see here was judged before the change on sheet {remote}.
        </Notice>
      )}
    </>
  );
}
function FailureNotice({ failure, intentions }: { failure: Failure; intentions: Intentions }) {
  const { kind, retry } = failure;
  const [title, next] = titled(failure);
  return (
    <Notice
      intent={kind === "stopped" ? "info" : MILD.includes(kind) ? "warning" : "error"}
      title={title}
      {...(retry === null ? {} : { action: { label: retryLabel(failure), onClick: () => void intentions.retry(retry) } })}
      onDismiss={() => {
        intentions.tell({ kind: "dismiss", what: "failure" });
      }}
    >
      {next}
    </Notice>
  );
}
function retryLabel({ kind, retry }: Failure): string {
  if (retry === "name back") return "Name them back and build";
  return kind === "stopped" ? "Build again" : "Try again";
}
/** The first sentence stands in bold, the next step after it. An error that nobody foresaw gets words of our own. */
function titled({ kind, message }: Failure): readonly [title: string, next: string] {
  if (kind === "unknown")
    return ["That did not work.", `Try again; if it comes back, close the pane and open it. What was reported: ${message}`];
  const end = message.indexOf(". ");
  return end < 0 ? [message, ""] : [message.slice(0, end + 1), message.slice(end + 2)];
}
