import { CanvasTexture, Sprite, SpriteMaterial, SRGBColorSpace, type Color } from "three";

export type LabelLook = {
  readonly text: string;
  /** It stands for something within the piece, which then never hides it. */
  readonly isInside?: boolean | undefined;
  readonly shape: "round" | "square" | "point" | "plain";
  readonly fill: Color;
  readonly ink: Color;
  readonly line: Color;
};

const high = 64;
const font = `650 38px "Inter Variable", system-ui, sans-serif`;

/** A small label that always faces the eye and keeps its size on the screen; faint where the piece is before it. */
export function floatingLabel(look: LabelLook): {
  readonly sprites: readonly Sprite[];
  readonly aspect: number;
  readonly dispose: () => void;
} {
  const { canvas, aspect } = drawn(look);
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  const material = (depthTest: boolean): SpriteMaterial =>
    new SpriteMaterial({
      map: texture,
      depthTest,
      depthWrite: false,
      sizeAttenuation: false,
      opacity: depthTest || look.isInside === true ? 1 : 0.4,
    });
  const materials = look.isInside === true ? [material(false)] : [material(false), material(true)];
  const sprites = materials.map((one, n) => {
    const sprite = new Sprite(one);
    sprite.renderOrder = 20 + n;
    sprite.center.set(0.5, look.shape === "plain" ? 0.5 : -0.25);
    return sprite;
  });
  return {
    sprites,
    aspect,
    dispose: () => {
      texture.dispose();
      for (const one of materials) one.dispose();
    },
  };
}

function drawn({ text, shape, fill, ink, line }: LabelLook): { canvas: HTMLCanvasElement; aspect: number } {
  const canvas = document.createElement("canvas");
  const pen = canvas.getContext("2d")!;
  pen.font = font;
  const wide = Math.max(high, Math.ceil(pen.measureText(text).width) + 28);
  canvas.width = wide;
  canvas.height = high;
  pen.font = font;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  outline(pen, { shape, wide });
  pen.fillStyle = fill.getStyle();
  pen.strokeStyle = line.getStyle();
  pen.lineWidth = 5;
  pen.fill();
  if (shape !== "plain") pen.stroke();
  pen.fillStyle = ink.getStyle();
  pen.fillText(text, wide / 2, high / 2 + 2);
  return { canvas, aspect: wide / high };
}

function outline(
  pen: CanvasRenderingContext2D,
  { shape, wide }: { shape: LabelLook["shape"]; wide: number },
): void {
  const edge = 4;
  pen.beginPath();
  if (shape === "point") {
    const cut = 16;
    pen.moveTo(edge + cut, edge);
    pen.lineTo(wide - edge - cut, edge);
    pen.lineTo(wide - edge, high / 2);
    pen.lineTo(wide - edge - cut, high - edge);
    pen.lineTo(edge + cut, high - edge);
    pen.lineTo(edge, high / 2);
    pen.closePath();
    return;
  }
  const radius = shape === "round" ? high / 2 - edge : 8;
  pen.roundRect(edge, edge, wide - 2 * edge, high - 2 * edge, radius);
}
