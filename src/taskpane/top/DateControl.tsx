/** Chooses the day that due dates are held against. */
import { Button, Field, Input, makeStyles } from "@fluentui/react-components";
import { useState } from "react";
import { isoOf, serialOfIso, serialOfToday } from "../shared/days";

const useStyles = makeStyles({
  form: { display: "flex", flexDirection: "column", gap: "10px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "6px" },
});
interface Props {
  asOf: number;
  chosen: boolean;
  onChange: (asOf: number, chosen: boolean) => void;
}
export function DateControl({ asOf, chosen, onChange }: Props) {
  const styles = useStyles();
  const [text, setText] = useState(isoOf(asOf));
  const serial = serialOfIso(text);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (serial !== null) onChange(serial, true);
      }}
    >
      <Field
        label="Day"
        hint={chosen ? "A day that you chose." : "Today; tomorrow it is the next day."}
        {...(serial === null ? { validationMessage: "Give day, month and year, from 1900 on." } : {})}
      >
        <Input
          type="date"
          value={text}
          onChange={(_, data) => {
            setText(data.value);
          }}
        />
      </Field>
      <div className={styles.buttons}>
        <Button type="submit" appearance="primary" disabledFocusable={serial === null}>
          Use this day
        </Button>
        {chosen && (
          <Button
            onClick={() => {
              onChange(serialOfToday(new Date()), false);
            }}
          >
            Use today
          </Button>
        )}
      </div>
    </form>
  );
}
