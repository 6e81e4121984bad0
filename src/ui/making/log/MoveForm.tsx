import { z } from "zod";
import { useRooms } from "../../base/state/live.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function MoveForm({ item }: LogFormProps) {
  const here = item.standing.piece.rooms.at(-1)?.roomId ?? null;
  const rooms = (useRooms() ?? []).filter((room) => !room.retired && room.id !== here);
  const schema = z.object({ roomId: z.string({ error: "No room chosen. Tap the room it hangs in now." }) });
  const initial: { readonly roomId: string | null } = { roomId: null };
  return (
    <LogForm
      item={item}
      type="piece-moved"
      title="Move to another room"
      save="Moved"
      initial={initial}
      schema={schema}
      blocked={rooms.length === 0 ? "There is no other room yet. Add one under Rooms." : null}
    >
      {({ draft, set, errors }) => (
        <>
          <p>
            It hangs in {item.standing.room?.name ?? "no known room"}. From now on its drying follows the new
            room's air.
          </p>
          {rooms.length > 0 && (
            <PickField
              label="Now in"
              options={rooms.map(({ id, name }) => ({ value: id, label: name }))}
              value={draft.roomId}
              onChange={(roomId) => set({ roomId })}
              error={errors["roomId"]}
            />
          )}
        </>
      )}
    </LogForm>
  );
}
