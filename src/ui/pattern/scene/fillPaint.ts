import {
  Color,
  Data3DTexture,
  HalfFloatType,
  LinearFilter,
  Matrix4,
  RGFormat,
  Vector3,
  type MeshLambertMaterial,
} from "three";
import type { SceneColours } from "./sceneColours.ts";
import type { FillLook } from "./sceneView.ts";

/** Paints a material by how far the metal has come: waiting, metal, or air that was cut off. */
export type FillPaint = {
  /** `toMesh` takes the material's own coordinates to mesh mm. */
  readonly on: (material: MeshLambertMaterial, toMesh: Matrix4) => void;
  readonly set: (fill: FillLook | null, colours: SceneColours) => void;
  readonly dispose: () => void;
};

export function fillPaint(): FillPaint {
  let pairs: Uint16Array | null = null;
  const nothing = new Data3DTexture(new Uint16Array(2), 1, 1, 1);
  nothing.format = RGFormat;
  nothing.type = HalfFloatType;
  nothing.needsUpdate = true;
  const shared = {
    fillOn: { value: false },
    fillAt: { value: nothing },
    fillShare: { value: 0 },
    fillToCells: { value: new Matrix4() },
    fillWaiting: { value: new Color() },
    fillMetal: { value: new Color() },
    fillAir: { value: new Color() },
  };
  return {
    on: (material, toMesh) => {
      material.onBeforeCompile = (shader) => {
        Object.assign(shader.uniforms, shared, { fillToMesh: { value: toMesh } });
        shader.vertexShader = shader.vertexShader
          .replace("#include <common>", `#include <common>\n${vertexHead}`)
          .replace("#include <begin_vertex>", `#include <begin_vertex>\n${vertexBody}`);
        shader.fragmentShader = shader.fragmentShader
          .replace("#include <common>", `#include <common>\n${fragmentHead}`)
          .replace("#include <color_fragment>", `#include <color_fragment>\n${fragmentBody}`);
      };
    },
    set: (fill, colours) => {
      shared.fillOn.value = fill !== null;
      if (fill === null) return;
      shared.fillShare.value = fill.share;
      shared.fillWaiting.value.copy(colours["band-prime"]).lerp(colours["line-strong"], 0.25);
      shared.fillMetal.value.copy(colours.ember);
      shared.fillAir.value.copy(colours.water);
      if (fill.pairs === pairs) return;
      pairs = fill.pairs;
      if (shared.fillAt.value !== nothing) shared.fillAt.value.dispose();
      shared.fillAt.value = textureOf(fill);
      shared.fillToCells.value.copy(toCells(fill.grid));
    },
    dispose: () => {
      shared.fillAt.value.dispose();
      nothing.dispose();
    },
  };
}

function textureOf({ pairs, grid: { nu, nv, nw } }: FillLook): Data3DTexture {
  const texture = new Data3DTexture(pairs, nu, nv, nw);
  texture.format = RGFormat;
  texture.type = HalfFloatType;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.unpackAlignment = 4;
  texture.needsUpdate = true;
  return texture;
}

/** Mesh mm to 0–1 over the block of cells. */
function toCells({ nu, nv, nw, pitch, origin, u, v, w }: FillLook["grid"]): Matrix4 {
  return new Matrix4()
    .makeBasis(
      new Vector3(...u).multiplyScalar(nu * pitch),
      new Vector3(...v).multiplyScalar(nv * pitch),
      new Vector3(...w).multiplyScalar(nw * pitch),
    )
    .setPosition(...origin)
    .invert();
}

const vertexHead = `uniform mat4 fillToMesh;
uniform mat4 fillToCells;
varying vec3 vFillCell;`;
const vertexBody = `vFillCell = (fillToCells * fillToMesh * vec4(transformed, 1.0)).xyz;`;
const fragmentHead = `uniform bool fillOn;
uniform highp sampler3D fillAt;
uniform float fillShare;
uniform vec3 fillWaiting;
uniform vec3 fillMetal;
uniform vec3 fillAir;
varying vec3 vFillCell;`;
const fragmentBody = `if (fillOn) {
  vec2 told = texture(fillAt, vFillCell).rg;
  bool come = told.r > 0.0 && told.r <= fillShare;
  diffuseColor.rgb = come ? (told.g > 0.5 ? fillAir : fillMetal) : fillWaiting;
}`;
