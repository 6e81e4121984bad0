import type { LearnedFactor } from "../../../physics/evidence/calibration.ts";
import type { ShopLearning } from "../../../physics/evidence/shopLearning.ts";
import { mostUntilAgreed } from "../../../physics/evidence/trustedLearning.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { coatFamilyWords } from "./learnedWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LearnedPage.module.css";

/** The factor on drying time of the shop and of each group, with their intervals. */
export function FactorCard({
  learning,
  figures,
}: {
  readonly learning: ShopLearning;
  readonly figures: Shop;
}) {
  const { log } = useShop();
  const format = useFormat();
  const { shop, groups, scatter } = learning;
  const number = (value: number): string => format.number(value, 2);
  const clear = () =>
    log({ do: "log", stream: shopStream, type: "shop-figures-set", body: { dryingFactor: null } });
  return (
    <Card title="Drying factor">
      <p className={styles["big"]}>
        {number(shop.factor)}
        <small>
          {shop.pairs === 0
            ? "the starting value: nothing learned yet"
            : `times the calculated hours, between ${number(shop.low)} and ${number(shop.high)} (nine in ten), from ${shop.pairs} ${shop.pairs === 1 ? "coat" : "coats"}`}
        </small>
      </p>
      {figures.dryingFactor !== null && (
        <p>
          A factor of {number(figures.dryingFactor)} is set by hand and used instead of the learned one.{" "}
          <Button onPress={clear}>Use what was learned</Button>
        </p>
      )}
      {shop.limited && (
        <p role="note">
          Your coats give a factor outside 0.33 to 3, so an entry is probably wrong. Check room readings, air
          movement and coat water.
        </p>
      )}
      {groups.size > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Coats</th>
              <th scope="col">Factor</th>
              <th scope="col">Nine in ten</th>
              <th scope="col">From</th>
            </tr>
          </thead>
          <tbody>
            <FactorRow name="All of the shop" factor={shop} number={number} />
            {[...groups].map(([group, factor]) => (
              <FactorRow key={group} name={coatFamilyWords(group)} factor={factor} number={number} />
            ))}
          </tbody>
        </table>
      )}
      <details>
        <summary>How this is learned</summary>
        <p className={`${sheet["sunk"]} ${sheet["scroll"]} ${sheet["inset"]}`}>
          ln factor = b + d, b ~ N(0, 0.40²), d ~ N(0, 0.20²)
        </p>
        <p>
          The calculated drying time, with a factor of 1, is compared with when an instrument found the coat
          wet or dry. “Dry in the morning” means dry by then. Touch and colour are left out: they show only
          the outer film. A coat counts once it is covered or fired.
        </p>
        <p>
          Until three coats agree, the factor stays between {number(1 / mostUntilAgreed)} and{" "}
          {number(mostUntilAgreed)}. Weighings and surface readings count in full, the bag at 0.7, resistance
          at 0.5. One coat differs from the factor by {number(scatter)} (standard deviation of the logarithm);
          from eight coats on this is the shop's own. Nine coats in ten are dry after{" "}
          {number(shop.safeMultiplier)} times the calculated hours.
        </p>
      </details>
    </Card>
  );
}

function FactorRow(props: {
  readonly name: string;
  readonly factor: LearnedFactor;
  readonly number: (value: number) => string;
}) {
  const { name, factor, number } = props;
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{number(factor.factor)}</td>
      <td>
        {number(factor.low)}–{number(factor.high)}
      </td>
      <td>{factor.pairs === 1 ? "1 coat" : `${factor.pairs} coats`}</td>
    </tr>
  );
}
