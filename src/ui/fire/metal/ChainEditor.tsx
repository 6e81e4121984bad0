import { ArrowDown, ArrowUp, Trash2 } from "lucide-react";
import { useState } from "react";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";
import type { LinkRole } from "../../../physics/metal/feedChain.ts";
import type { PatternMeasured } from "../../../logbook/entries/pieceBodies.ts";
import { Button } from "../../base/parts/Button.tsx";
import { solidOf } from "../../../logbook/casting/chainSum.ts";
import {
  emptyLink,
  linkLimits,
  type GatingDraft,
  type LinkDraft,
  type LinkShape,
} from "../../../logbook/casting/gatingDraft.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import { NumberOf, SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";

const roles: readonly { readonly value: LinkRole; readonly label: string }[] = [
  { value: "casting", label: "Casting section" },
  { value: "gate", label: "Gate" },
  { value: "runner", label: "Runner" },
  { value: "riser", label: "Riser" },
  { value: "sprue", label: "Sprue" },
  { value: "cup", label: "Cup" },
];
const shapes: readonly { readonly value: LinkShape; readonly label: string }[] = [
  { value: "plate", label: "Plate" },
  { value: "bar", label: "Bar" },
  { value: "round", label: "Round bar" },
  { value: "tube", label: "Tube" },
  { value: "ball", label: "Ball" },
  { value: "cup", label: "Upright round, open on top" },
  { value: "measured", label: "Volume and surface" },
];
const roleWords = (role: LinkRole): string => roles.find(({ value }) => value === role)?.label ?? role;

type SizeName = "thicknessMm" | "widthMm" | "lengthMm" | "diameterMm" | "volumeCm3" | "areaCm2";
type Size = { readonly name: SizeName; readonly label: string; readonly mayBeEmpty?: boolean };
const long: Size = { name: "lengthMm", label: "Length", mayBeEmpty: true };

/** Of a section whose length is not given. */
const held: Size = { name: "volumeCm3", label: "Volume, where no length is given", mayBeEmpty: true };

const sizes: Readonly<Record<LinkShape, readonly Size[]>> = {
  plate: [
    { name: "thicknessMm", label: "Thickness" },
    { name: "widthMm", label: "Width", mayBeEmpty: true },
    long,
    held,
  ],
  bar: [{ name: "thicknessMm", label: "Thickness" }, { name: "widthMm", label: "Width" }, long],
  round: [{ name: "diameterMm", label: "Diameter" }, long, held],
  tube: [
    { name: "diameterMm", label: "Outer diameter" },
    { name: "thicknessMm", label: "Wall thickness" },
    long,
  ],
  ball: [{ name: "diameterMm", label: "Diameter" }],
  cup: [
    { name: "diameterMm", label: "Diameter" },
    { name: "lengthMm", label: "Height" },
  ],
  measured: [
    { name: "volumeCm3", label: "Volume" },
    { name: "areaCm2", label: "Cooling surface" },
  ],
};

/** The parts metal feeds through, from the far end of the casting to the cup; one at a time is open. */
export function ChainEditor({
  form: { draft, set },
  mesh,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly mesh: PatternMeasured | null;
}) {
  const { links } = draft;
  const [open, setOpen] = useState<number | null>(null);
  const put = (next: readonly LinkDraft[]): void => set({ links: next });
  const nextKey = Math.max(0, ...links.map(({ key }) => key)) + 1;
  const move = (at: number, by: 1 | -1): void => {
    const [link, other] = [links[at], links[at + by]];
    if (link !== undefined && other !== undefined) put(links.with(at, other).with(at + by, link));
  };
  const add = (link: LinkDraft): void => {
    put(link.role === "casting" ? [link, ...links] : [...links, link]);
    setOpen(link.key);
  };
  return (
    <>
      <p className={sheet["soft"]}>From the far end of the casting, part by part, to the cup.</p>
      <ol className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {links.map((link, at) => (
          <li key={link.key}>
            <details
              className={css["route"]}
              open={open === link.key}
              onToggle={(event) => {
                const isOpen = event.currentTarget.open;
                setOpen((now) => (isOpen ? link.key : now === link.key ? null : now));
              }}
            >
              <summary>
                <span className={`${sheet["row03"]} ${css["routeName"]}`}>
                  {link.name === "" ? `Part ${at + 1}` : link.name}{" "}
                  <small>
                    {solidOf(link) === null ? "sizes missing" : roleWords(link.role).toLowerCase()}
                  </small>
                </span>
              </summary>
              {open === link.key && (
                <LinkFields
                  link={link}
                  onChange={(changes) => put(links.with(at, { ...link, ...changes }))}
                />
              )}
              <div className={css["keys"]}>
                <Button label={`Move ${link.name} up`} onPress={() => move(at, -1)}>
                  <ArrowUp aria-hidden="true" />
                </Button>
                <Button label={`Move ${link.name} down`} onPress={() => move(at, 1)}>
                  <ArrowDown aria-hidden="true" />
                </Button>
                <Button
                  label={`Take out ${link.name}`}
                  onPress={() => put(links.filter(({ key }) => key !== link.key))}
                >
                  <Trash2 aria-hidden="true" />
                </Button>
              </div>
            </details>
          </li>
        ))}
      </ol>
      <div className={css["keys"]}>
        <Button onPress={() => add(emptyLink(nextKey, "Casting section", "casting", "plate"))}>
          Add a casting section
        </Button>
        <Button onPress={() => add(emptyLink(nextKey, "Riser", "riser", "cup"))}>Add a riser</Button>
        {mesh !== null && mesh.volumeMm3 !== null && (
          <Button
            onPress={() =>
              add({
                ...emptyLink(nextKey, "Casting, from its 3D file", "casting", "measured"),
                volumeCm3: (mesh.volumeMm3 ?? 0) / 1000,
                areaCm2: mesh.areaMm2 / 100,
              })
            }
          >
            Add the 3D file
          </Button>
        )}
      </div>
    </>
  );
}

function LinkFields({
  link,
  onChange,
}: {
  readonly link: LinkDraft;
  readonly onChange: (changes: Partial<LinkDraft>) => void;
}) {
  const form = { draft: link, set: onChange, limits: linkLimits };
  return (
    <div className={sheet["stack3"]}>
      <TextOf form={form} at="name" label="Name" />
      <div className={css["fields"]}>
        <SelectOf form={form} at="role" label="Part" options={roles} empty={null} />
        <SelectOf form={form} at="shape" label="Closest shape" options={shapes} empty={null} />
        {sizes[link.shape].map(({ name, label, mayBeEmpty }) => (
          <NumberOf
            form={form}
            at={name}
            key={name}
            label={label}
            quantity={name === "volumeCm3" ? "cm3" : name === "areaCm2" ? "cm2" : "mm"}
            hint={mayBeEmpty === true ? "Empty: very long." : undefined}
          />
        ))}
        <NumberOf
          form={form}
          at="coveredCm2"
          label="Face against its neighbours"
          quantity="cm2"
          hint="The contact area that does not cool. Empty: none."
        />
      </div>
    </div>
  );
}
