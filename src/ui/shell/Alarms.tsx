import { Ringer } from "../base/alarm/Ringer.tsx";
import { WatcherGuard } from "../base/parts/WatcherGuard.tsx";
import { MeltDues } from "../fire/pour/MeltDues.tsx";
import { PourDues } from "../fire/pour/PourDues.tsx";
import { RunDues } from "../fire/run/RunDues.tsx";
import { RackDues } from "../making/due/RackDues.tsx";

/** All that has due times, each in a guard of its own, and the one look that rings them. */
export function Alarms() {
  return (
    <>
      <WatcherGuard watches="Alarms for coats">
        <RackDues />
      </WatcherGuard>
      <WatcherGuard watches="Alarms for kiln runs">
        <RunDues />
      </WatcherGuard>
      <WatcherGuard watches="Alarms for melts">
        <MeltDues />
      </WatcherGuard>
      <WatcherGuard watches="Alarms for pours">
        <PourDues />
      </WatcherGuard>
      <WatcherGuard watches="All alarms">
        <Ringer />
      </WatcherGuard>
    </>
  );
}
