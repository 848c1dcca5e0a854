/** One part of the line on top: a plain button, or one that opens its control. */
import { Button, makeStyles, Popover, PopoverSurface, PopoverTrigger, tokens } from "@fluentui/react-components";
import { ChevronDown12Regular } from "@fluentui/react-icons/svg/chevron-down";
import { type ReactNode, useId, useState } from "react";

const useStyles = makeStyles({
  button: { minWidth: 0, maxWidth: "100%", padding: "1px 5px", fontWeight: tokens.fontWeightRegular },
  text: { overflow: "hidden", textOverflow: "ellipsis", whiteSpace: "nowrap" },
  surface: {
    boxSizing: "border-box",
    width: "284px",
    maxWidth: "calc(100vw - 16px)",
    maxHeight: "calc(100vh - 16px)",
    overflowY: "auto",
    padding: "12px",
    display: "flex",
    flexDirection: "column",
    gap: "10px",
    "& > *": { flexShrink: 0 },
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
});
export function PartButton({ text, hint, onClick }: { text: string; hint: string; onClick: () => void }) {
  const styles = useStyles();
  return (
    <Button appearance="subtle" size="small" className={styles.button} aria-label={`${text}: ${hint}`} title={text} onClick={onClick}>
      <span className={styles.text}>{text}</span>
    </Button>
  );
}
export function Part({
  text,
  hint,
  title,
  children,
}: {
  text: string;
  hint: string;
  title: string;
  children: (close: () => void) => ReactNode;
}) {
  const styles = useStyles();
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <Popover
      open={open}
      onOpenChange={(_, data) => {
        setOpen(data.open);
      }}
      trapFocus
      positioning={{ position: "below", align: "start", overflowBoundaryPadding: 8, autoSize: "height" }}
    >
      <PopoverTrigger disableButtonEnhancement>
        <Button
          appearance="subtle"
          size="small"
          className={styles.button}
          aria-label={`${text}: ${hint}`}
          title={text}
          icon={<ChevronDown12Regular />}
          iconPosition="after"
        >
          <span className={styles.text}>{text}</span>
        </Button>
      </PopoverTrigger>
      <PopoverSurface className={styles.surface} aria-labelledby={id}>
        <h2 id={id} className={styles.title}>
          {title}
        </h2>
        {children(() => {
          setOpen(false);
        })}
      </PopoverSurface>
    </Popover>
  );
}
