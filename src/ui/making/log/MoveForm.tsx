import { useRooms } from "../../base/state/live.ts";
import { chosen } from "../../base/forms/formFields.ts";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function MoveForm({ item }: LogFormProps) {
  const here = item.standing.piece.rooms.at(-1)?.roomId ?? null;
  const rooms = (useRooms() ?? []).filter((room) => !room.retired && room.id !== here);
  const fields = { roomId: chosen("No room chosen. Tap the room it is in now.") };
  return (
    <LogForm
      item={item}
      type="piece-moved"
      title="Move to another room"
      save="Moved"
      fields={fields}
      body={(read) => read}
      blocked={rooms.length === 0 ? "There is no other room yet. Add one under Rooms." : null}
    >
      {(form) => (
        <>
          <p>
            It is in {item.standing.room?.name ?? "no known room"}. From now on its drying follows the new
            room’s air.
          </p>
          {rooms.length > 0 && (
            <PickOf
              form={form}
              at="roomId"
              label="Now in"
              options={rooms.map(({ id, name }) => ({ value: id, label: name }))}
            />
          )}
        </>
      )}
    </LogForm>
  );
}
