import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { Room } from "../../../logbook/piece/piece.ts";
import { pressureAtAltitudePa } from "../../../physics/air/air.ts";
import {
  modelLossLDay,
  movingLossKgM2H,
  stillLossKgM2H,
  type OverBucket,
} from "../../../physics/air/evaporation.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { useRooms, useSettings } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";

const fewest = 3;

/** What dries off a day: a model's first guess until the bucket's own top-ups tell. */
export function LossCard({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const rooms = useRooms();
  const [{ shopRoomId }] = useSettings();
  const { learned, aim, bucket } = standing;
  const read = (rooms ?? []).filter(({ retired, last }) => !retired && last !== null);
  const room = read.find(({ id }) => id === shopRoomId) ?? read[0] ?? null;
  const over = room && overOf(room, aim.slurryC?.value ?? null);
  const areaM2 = bucket.targets.openM2 ?? null;
  const rows = (["off", "on"] as const).map((lid) => {
    const own = lid === "off" ? learned.lidOff : learned.lidOn;
    const guess =
      over === null || areaM2 === null ? null : modelLossLDay({ areaM2, speedMS: over.speedMS, lid, over });
    return { lid, own, guess };
  });
  return (
    <Card title="Evaporation">
      <table>
        <thead>
          <tr>
            <th scope="col">Lid</th>
            <th scope="col">A day</th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ lid, own, guess }) => (
            <tr key={lid}>
              <th scope="row">{lid}</th>
              <td>
                {own.lossLDay !== null
                  ? format.show("litre", own.lossLDay)
                  : guess === null
                    ? "–"
                    : `${format.number(format.toShown("litre", guess.lowLDay), 2)} to ${format.show("litre", guess.highLDay)}`}
              </td>
              <td>
                {own.lossLDay !== null
                  ? `its last ${own.topUps} top-ups`
                  : `${guess === null ? "nothing yet" : "a first estimate"}; ${own.topUps} of ${fewest} top-ups`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {areaM2 === null && (
        <p className={sheet["soft"]}>Set its open surface in the targets for a first estimate.</p>
      )}
      {areaM2 !== null && over === null && (
        <p className={sheet["soft"]}>Log the air of the shop’s room for a first estimate.</p>
      )}
      {over !== null && areaM2 !== null && (
        <Reckoned
          formula="still air: the larger of 35·ρ·∛Δρ·ΔW and 5·10⁻⁵·Δp, kg/m²h; moving air: Δp·(0.089 + 0.0782·v) ÷ latent heat"
          given={[
            [
              "Air",
              `${room?.name ?? ""}: ${format.show("temp", over.airC)}, ${format.show("percent", over.rh)}`,
            ],
            ["Slurry’s surface", format.show("temp", over.surfaceC)],
            ["Air moves", format.show("speed", over.speedMS)],
            ["Open surface", format.show("m2", areaM2)],
            ["Still", `${format.show("gM2", stillLossKgM2H(over) * 1000)} an hour`],
            ["Moving", `${format.show("gM2", movingLossKgM2H(over) * 1000)} an hour`],
          ]}
          source="M. M. Shah, ASHRAE Transactions 120(2), 2014; ASHRAE Handbook HVAC Applications, Carrier’s form (both from memory). They differ threefold. A lid leaves a tenth: common practice, no source"
        />
      )}
    </Card>
  );
}

function overOf(room: Room, slurryC: number | null): (OverBucket & { readonly speedMS: number }) | null {
  if (room.last === null) return null;
  const { airC, rh, air, pressurePa } = room.last;
  const surfaceC = slurryC ?? airC;
  if (airC < 0 || airC > 60 || surfaceC < 0 || surfaceC > 60 || rh < 0 || rh > 1) return null;
  return {
    airC,
    rh,
    surfaceC,
    pressurePa: pressurePa ?? pressureAtAltitudePa(room.altitudeM),
    speedMS: Math.min(3, airClasses[air].speedMS),
  };
}
