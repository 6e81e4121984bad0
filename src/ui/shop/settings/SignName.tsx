import { useState } from "react";
import { useSettings } from "../../base/state/live.ts";
import { TextField } from "../../base/forms/TextField.tsx";

const longest = 120;

/** Written at every key stroke; the field itself does not wait for the store. */
export function SignName() {
  const [settings, change] = useSettings();
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <TextField
      label="Name under a review"
      value={typed ?? settings.signName}
      onChange={(name) => {
        const signName = name.slice(0, longest);
        setTyped(signName);
        void change({ signName: signName.trim() });
      }}
      hint="Filled in when you sign. You can change it there."
    />
  );
}
