import type { PhotoRow } from "../../../storage/rows.ts";
import { demoPhotoId } from "./demoIds.ts";
import { noise } from "./demoNumbers.ts";

const widthPx = 800;
const heightPx = 600;

/** What the demo shows as photos, drawn on the spot; nothing where this browser can't draw. */
export async function demoPhotos(): Promise<readonly PhotoRow[]> {
  const canvas = document.createElement("canvas");
  canvas.width = widthPx;
  canvas.height = heightPx;
  const pen = canvas.getContext("2d");
  if (pen === null) return [];
  bench(pen);
  gnomon(pen);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  return blob === null ? [] : [{ id: demoPhotoId, blob }];
}

type Pen = CanvasRenderingContext2D;

/** A bench of boards, its grain and its light. */
function bench(pen: Pen): void {
  const light = pen.createLinearGradient(0, 0, widthPx, heightPx);
  light.addColorStop(0, "#8c7a63");
  light.addColorStop(1, "#5d4f3f");
  pen.fillStyle = light;
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.lineWidth = 1.5;
  for (let line = 0; line < 90; line += 1) {
    const y = (line * heightPx) / 90 + 4 * noise(line);
    pen.strokeStyle = `rgb(40 30 20 / ${0.08 + 0.1 * Math.abs(noise(line + 0.5))})`;
    pen.beginPath();
    pen.moveTo(0, y);
    pen.bezierCurveTo(260, y + 9 * noise(line + 0.2), 540, y - 9 * noise(line + 0.7), widthPx, y);
    pen.stroke();
  }
}

/** A plate with a long tip: rounded off short where the metal froze, as a misrun is. */
function gnomon(pen: Pen): void {
  const shape = new Path2D(
    "M120 470 C110 430 150 420 190 410 L520 214 C546 198 566 190 584 196 C600 202 598 222 586 232 C572 244 560 240 546 254 L470 420 C462 440 476 452 474 470 C470 496 440 498 420 498 L160 498 C136 498 124 490 120 470Z M250 440 C250 424 280 410 306 396 L420 330 C432 324 436 332 432 342 L398 424 C392 438 380 448 364 450 L272 456 C258 456 250 452 250 440Z",
  );
  pen.save();
  pen.shadowColor = "rgb(0 0 0 / 0.55)";
  pen.shadowBlur = 26;
  pen.shadowOffsetX = 14;
  pen.shadowOffsetY = 18;
  const bronze = pen.createLinearGradient(120, 200, 560, 500);
  bronze.addColorStop(0, "#d8a765");
  bronze.addColorStop(0.5, "#b07c3f");
  bronze.addColorStop(1, "#7c5228");
  pen.lineWidth = 6;
  pen.strokeStyle = bronze;
  pen.stroke(shape);
  pen.restore();
  pen.save();
  pen.clip(shape, "evenodd");
  pen.fillStyle = bronze;
  pen.fillRect(0, 0, widthPx, heightPx);
  for (let spot = 0; spot < 900; spot += 1) {
    const x = 360 + 260 * noise(spot);
    const y = 350 + 170 * noise(spot + 0.3);
    pen.fillStyle = noise(spot + 0.6) > 0 ? "rgb(255 226 170 / 0.16)" : "rgb(50 28 10 / 0.2)";
    pen.beginPath();
    pen.arc(x, y, 1.2 + 1.4 * Math.abs(noise(spot + 0.9)), 0, 2 * Math.PI);
    pen.fill();
  }
  pen.restore();
  pen.lineWidth = 3;
  pen.strokeStyle = "rgb(60 34 12 / 0.7)";
  pen.stroke(shape);
  // Where the tip should have ended.
  pen.setLineDash([10, 9]);
  pen.strokeStyle = "rgb(255 255 255 / 0.85)";
  pen.beginPath();
  pen.moveTo(590, 196);
  pen.lineTo(700, 128);
  pen.lineTo(578, 240);
  pen.stroke();
  pen.setLineDash([]);
  pen.fillStyle = "#fff";
  pen.font = "600 26px sans-serif";
  pen.fillText("Demo", 24, 48);
}
