/** Tagging an item out, releasing it by a named qualified person, recording that it was made unusable. */
import { Button, Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { DISPOSAL, RELEASE, TAG, type TagAct } from "../../engine/programme/tag";
import type { ItemResult } from "../../engine/report/model";
import { Folded } from "../shared/Section";
import type { Intentions } from "../state/actions";
import { useRoundStyles } from "./styles";

const WORDS: Readonly<Record<TagAct, { readonly by: string; readonly words: string; readonly button: string }>> = {
  [TAG]: { by: "Tagged out by", words: "Reason", button: "Tag out" },
  [RELEASE]: { by: "Qualified person who releases it", words: "What was done", button: "Release" },
  [DISPOSAL]: { by: "Made unusable by", words: "How", button: "Record disposal" },
};
interface Props {
  item: ItemResult;
  free: boolean;
  intentions: Intentions;
}
export function TagPart({ item, free, intentions }: Props) {
  const acts: readonly TagAct[] = item.tagged ? [RELEASE, DISPOSAL] : [TAG];
  return (
    <>
      {acts.map((act) => (
        <Folded key={act} title={WORDS[act].button}>
          <TagForm act={act} item={item} free={free} intentions={intentions} />
        </Folded>
      ))}
    </>
  );
}
function TagForm({ act, item, free, intentions }: Props & { act: TagAct }) {
  const styles = useRoundStyles();
  const [by, setBy] = useState("");
  const [words, setWords] = useState("");
  return (
    <>
      <Field label={WORDS[act].by} size="small">
        <Input
          value={by}
          onChange={(_, data) => {
            setBy(data.value);
          }}
        />
      </Field>
      <Field label={WORDS[act].words} size="small">
        <Input
          value={words}
          onChange={(_, data) => {
            setWords(data.value);
          }}
        />
      </Field>
      <div className={styles.row}>
        <Button disabledFocusable={!free} onClick={() => void intentions.tag({ act, id: item.id, by, words })}>
          {WORDS[act].button}
        </Button>
        <span className={styles.hint}>Dated today; kept in the history and in the register.</span>
      </div>
    </>
  );
}
