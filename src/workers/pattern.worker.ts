import { joinSeams } from "../geometry/joinSeams.ts";
import type { Mesh } from "../geometry/mesh.ts";
import { MeshFault } from "../geometry/meshFault.ts";
import { answers } from "./pattern/answers.ts";
import { askedMesh, type AskedMesh } from "./pattern/askedMesh.ts";
import { buffersIn } from "./pattern/buffersIn.ts";
import { findOut, openPattern } from "./pattern/openPattern.ts";
import { Stopped, type Work } from "./pattern/work.ts";
import type { PatternAnswers, PatternJob, PatternReply, PatternWork } from "./patternMessages.ts";

/** One pattern at a time: the mesh as it was read, for closing its holes, and the one that is asked. */
let kept: { readonly asked: AskedMesh; readonly whole: Mesh | null } | null = null;
const running = new Map<number, AbortController>();

addEventListener("message", ({ data }: MessageEvent<PatternJob>) => {
  if (data.do === "cancel") running.get(data.id)?.abort();
  else void answer(data);
});

const tell = (reply: PatternReply, hand: Transferable[] = []): void => postMessage(reply, hand);

async function answer(job: Exclude<PatternJob, { do: "cancel" }>): Promise<void> {
  const { id } = job;
  const stop = new AbortController();
  running.set(id, stop);
  const work: Work = {
    signal: stop.signal,
    tell: (stage, share) => tell({ id, says: "progress", stage, share }),
  };
  try {
    const found = await done(job, work);
    if (found === null) tell({ id, says: "no-mesh" });
    else if (stop.signal.aborted) tell({ id, says: "stopped" });
    else tell({ id, says: "answer", answer: found.answer }, found.hand);
  } catch (error) {
    tell(replyTo(error, id));
  } finally {
    running.delete(id);
  }
}

type Done = { readonly answer: PatternAnswers[PatternWork]; readonly hand: Transferable[] };

async function done(job: Exclude<PatternJob, { do: "cancel" }>, work: Work): Promise<Done | null> {
  switch (job.do) {
    case "open": {
      forget(job.id);
      const { opened, ready, whole } = await openPattern(job.asked, work);
      kept = { asked: askedMesh(ready), whole: opened.found.measures.watertight ? null : whole };
      return { answer: opened, hand: [] };
    }
    case "restore": {
      forget(job.id);
      const { mesh } = job.asked;
      kept = { asked: askedMesh({ mesh, display: mesh }), whole: null };
      return { answer: { triangles: mesh.idx.length / 3 }, hand: [] };
    }
    case "close-holes": {
      if (kept?.whole === undefined || kept.whole === null) return null;
      const { whole } = kept;
      const { found, ready } = await findOut({ mesh: whole, caps: job.asked.caps, capUpTo: Infinity }, work);
      kept = { asked: askedMesh(ready), whole };
      return { answer: found, hand: [] };
    }
    case "join-seams": {
      if (kept?.whole === undefined || kept.whole === null) return null;
      const whole = joinSeams(kept.whole)?.mesh ?? kept.whole;
      const { found, ready } = await findOut({ mesh: whole, caps: job.asked.caps, capUpTo: undefined }, work);
      kept = { asked: askedMesh(ready), whole: found.measures.watertight ? null : whole };
      return { answer: found, hand: [] };
    }
    case "tips":
    case "trapped":
    case "skins":
    case "fill":
    case "thickness":
    case "spans":
    case "recesses":
    case "freeze":
    case "attitudes": {
      if (kept === null) return null;
      const ask = answers[job.do] as (
        mesh: AskedMesh,
        asked: typeof job.asked,
        work: Work,
      ) => Promise<PatternAnswers[PatternWork]>;
      const found = await ask(kept.asked, job.asked, work);
      return { answer: found, hand: buffersIn(found) };
    }
  }
}

/** Another mesh comes: what is still asked of the old one stops. */
function forget(except: number): void {
  for (const [id, stop] of running) if (id !== except) stop.abort();
  kept = null;
}

function replyTo(error: unknown, id: number): PatternReply {
  if (error instanceof Stopped) return { id, says: "stopped" };
  if (error instanceof MeshFault) {
    const { code, found, expected, remedy } = error;
    return { id, says: "fault", fault: { code, found, expected, remedy } };
  }
  const message = error instanceof Error ? error.message : String(error);
  // A buffer or a page of memory that could not be had is a RangeError too, told in the engine's own words.
  if (error instanceof RangeError && !/alloc|memory|length/i.test(message))
    return { id, says: "refused", message };
  return { id, says: "failed", message };
}
