import { useState } from "react";
import type { Command } from "../../../logbook/log/command.ts";
import type { CrackKind } from "../../../logbook/entries/pieceBodies.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { kindWords } from "../../base/format/coatWords.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import { damagedCommand, redipCommand, skipCommand } from "./dipCommands.ts";
import type { DipTile } from "./dipTile.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

const damages: readonly { kind: CrackKind; verb: string; under: string }[] = [
  { kind: "hairline", verb: "Hairline crack", under: "You see it, a nail does not catch" },
  { kind: "open", verb: "Open crack", under: "A nail catches in it" },
  { kind: "chip", verb: "Chip", under: "A bit broke off" },
  { kind: "lift", verb: "Lifted coat", under: "Hollow when tapped, or flaking" },
];

/** What may be different about one piece in a dip. */
export function PieceScreen(props: {
  readonly tile: DipTile;
  readonly standing: Standing;
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onAct: (command: Command, says: string) => Promise<boolean>;
  readonly onLeaveOut: () => void;
  readonly onTime: () => void;
  readonly onBack: () => void;
}) {
  const { tile, standing, told, out, onAct, onLeaveOut, onTime, onBack } = props;
  const [damage, setDamage] = useState(false);
  const { pieceId, name } = tile;
  const act = async (command: Command, says: string): Promise<void> => {
    if (await onAct(command, says)) onBack();
  };
  const way = { text: "Back", onPress: damage ? () => setDamage(false) : onBack };
  if (damage)
    return (
      <BucketScreen title={`${name}: what is it?`} way={way} out={out} told={told}>
        {damages.map(({ kind, verb, under }) => (
          <BigKey
            key={kind}
            main
            under={under}
            onPress={() => act(damagedCommand(pieceId, kind), `${verb} on ${name}`)}
          >
            {verb}
          </BigKey>
        ))}
      </BucketScreen>
    );
  const { next, outer } = standing;
  return (
    <BucketScreen title={name} way={way} out={out} told={told}>
      {tile.given === null ? (
        <BigKey onPress={onLeaveOut} under="Nothing is logged">
          Leave it out this time
        </BigKey>
      ) : (
        <BigKey onPress={onTime} under="“I did this at six”">
          Change the time of coat {tile.given.number}
        </BigKey>
      )}
      <BigKey
        disabled={next === null}
        under={
          next === null
            ? "The recipe has no further coat"
            : `Coat ${next.number}, ${kindWords[next.kind]}, will not be made`
        }
        onPress={() =>
          next !== null && act(skipCommand(pieceId, next.step), `Recipe coat skipped on ${name}`)
        }
      >
        Skip the recipe’s next coat
      </BigKey>
      <BigKey
        disabled={outer === null}
        under={
          outer === null ? "It has no coat yet" : `Coat ${outer.coat.number} gets more water, no new layer`
        }
        onPress={() =>
          outer !== null &&
          act(redipCommand(pieceId, outer.coat.id), `Coat ${outer.coat.number} dipped again: ${name}`)
        }
      >
        Dipped again
      </BigKey>
      <BigKey
        onPress={() => setDamage(true)}
        under="Crack, chip or lifted coat; stops the piece until repaired"
      >
        Damaged
      </BigKey>
    </BucketScreen>
  );
}
