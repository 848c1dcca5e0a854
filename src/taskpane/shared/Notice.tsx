/** A message with what to do about it. */
import {
  Button,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  type MessageBarProps,
  MessageBarTitle,
} from "@fluentui/react-components";
import { Dismiss16Regular } from "@fluentui/react-icons/svg/dismiss";
import type { ReactNode } from "react";

const useStyles = makeStyles({
  bar: { minWidth: 0, flexShrink: 0 },
  body: { overflowWrap: "anywhere" },
});
interface Props {
  intent: NonNullable<MessageBarProps["intent"]>;
  title: string;
  children?: ReactNode;
  action?: { readonly label: string; readonly onClick: () => void };
  onDismiss?: () => void;
}
export function Notice({ intent, title, children, action, onDismiss }: Props) {
  const styles = useStyles();
  const dismiss = onDismiss && (
    <Button appearance="transparent" size="small" aria-label={`Close: ${title}`} icon={<Dismiss16Regular />} onClick={onDismiss} />
  );
  return (
    <MessageBar intent={intent} layout="multiline" className={styles.bar}>
      <MessageBarBody className={styles.body}>
        <MessageBarTitle>{title}</MessageBarTitle> {children}
      </MessageBarBody>
      {(action !== undefined || dismiss !== undefined) && (
        <MessageBarActions {...(dismiss === undefined ? {} : { containerAction: dismiss })}>
          {action !== undefined && (
            <Button size="small" onClick={action.onClick}>
              {action.label}
            </Button>
          )}
        </MessageBarActions>
      )}
    </MessageBar>
  );
}
