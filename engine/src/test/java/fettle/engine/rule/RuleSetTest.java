package fettle.engine.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.InputException;
import fettle.engine.working.CitationStatus;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RuleSetTest {
    private static final RuleSet DEFAULTS = RuleSet.of(List.of());

    /** Limits of cell makers' sheets as tabled in the reference folder, battery_limits.csv (rows with status "read"). */
    @ParameterizedTest
    @CsvSource({
        "LIPO, CHARGE_LIMIT, 4.20",
        "LIPO, LOAD_MINIMUM, 3.0",
        "LIHV, CHARGE_LIMIT, 4.35",
        "LIFEPO4, CHARGE_LIMIT, 3.65",
        "LI_ION, CHARGE_LIMIT, 4.20"
    })
    void defaultsAreThePublishedLimits(Chemistry chemistry, Quantity quantity, double value) {
        assertThat(DEFAULTS.limitsFor(chemistry, null, List.of()).si(quantity)).isEqualTo(value);
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void everyChemistryHasEveryRuleInSensibleOrder(Chemistry chemistry) {
        Limits limits = DEFAULTS.limitsFor(chemistry, null, List.of());
        assertThat(limits.all()).extracting(Rule::quantity).containsExactly(Quantity.values());
        assertThat(limits.si(Quantity.LOAD_MINIMUM)).isLessThanOrEqualTo(limits.si(Quantity.REST_MINIMUM));
        assertThat(limits.si(Quantity.REST_MINIMUM)).isLessThan(limits.si(Quantity.STORAGE_LOW));
        assertThat(limits.si(Quantity.STORAGE_LOW)).isLessThan(limits.si(Quantity.STORAGE_HIGH));
        assertThat(limits.si(Quantity.STORAGE_HIGH)).isLessThan(limits.si(Quantity.CHARGE_LIMIT));
    }

    @Test
    void noReasonMakesALipoCellGoAbove4V20() {
        assertThatThrownBy(() -> DEFAULTS.refuseUnlessAllowed(
                        override(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.21, "my charger goes higher"), List.of()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("at most 4.20 V");
    }

    @Test
    void looserNeedsAReasonAndStricterDoesNot() {
        assertThatThrownBy(() -> DEFAULTS.refuseUnlessAllowed(
                        override(Chemistry.LIPO, Quantity.STORAGE_TIME, 96 * 3600, " "), List.of()))
                .hasMessageContaining("Give the reason");
        assertThatCode(() -> {
                    DEFAULTS.refuseUnlessAllowed(
                            override(Chemistry.LIPO, Quantity.STORAGE_TIME, 96 * 3600, "long weekend"), List.of());
                    DEFAULTS.refuseUnlessAllowed(
                            override(Chemistry.LIPO, Quantity.STORAGE_TIME, 48 * 3600, ""), List.of());
                })
                .doesNotThrowAnyException();
    }

    @Test
    void packRuleWinsOverMakersLimitAndMakersLimitOverBookRule() {
        RuleOverride book = override(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.18, "");
        RuleOverride maker = override(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.15, "sheet");
        RuleOverride pack = new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.10, "P07", "old");
        RuleSet rules = RuleSet.of(List.of(book, pack));
        assertThat(charge(rules.limitsFor(Chemistry.LIPO, "P01", List.of()))).isEqualTo(4.18);
        assertThat(charge(rules.limitsFor(Chemistry.LIPO, "P01", List.of(maker))))
                .isEqualTo(4.15);
        assertThat(charge(rules.limitsFor(Chemistry.LIPO, "p07", List.of(maker))))
                .isEqualTo(4.10);
    }

    @Test
    void aPackRuleLooserThanItsMakersLimitNeedsAReasonAndShowsIt() {
        RuleOverride maker = override(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.10, "sheet");
        RuleOverride bare = new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.20, "P07", "");
        assertThatThrownBy(() -> DEFAULTS.refuseUnlessAllowed(bare, List.of(maker)))
                .hasMessageContaining("looser than the rule of 4.10 V");
        RuleOverride reasoned = new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.20, "P07", "new sheet");
        DEFAULTS.refuseUnlessAllowed(reasoned, List.of(maker));
        Rule rule = RuleSet.of(List.of(reasoned))
                .limitsFor(Chemistry.LIPO, "P07", List.of(maker))
                .rule(Quantity.CHARGE_LIMIT);
        assertThat(rule.loosened()).isTrue();
        assertThat(rule.citation().text()).isEqualTo("new sheet");
    }

    @Test
    void holdsAStoredLimitThatNobodyCouldHaveEnteredToTheChemistrysBound() {
        RuleOverride forged = override(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.35, "edited by hand");
        assertThat(charge(RuleSet.of(List.of(forged)).limitsFor(Chemistry.LIPO, "P07", List.of())))
                .isEqualTo(4.20);
        assertThat(charge(DEFAULTS.limitsFor(Chemistry.LIPO, "P07", List.of(forged))))
                .isEqualTo(4.20);
    }

    @Test
    void showsThatARuleWasLoosenedAndWhy() {
        RuleSet rules = RuleSet.of(List.of(override(Chemistry.LIPO, Quantity.STORAGE_TIME, 96 * 3600, "long weekend")));
        Rule rule = rules.limitsFor(Chemistry.LIPO, null, List.of()).rule(Quantity.STORAGE_TIME);
        assertThat(rule.loosened()).isTrue();
        assertThat(rule.citation().text()).isEqualTo("long weekend");
        assertThat(rule.citation().status()).isEqualTo(CitationStatus.YOUR_OWN);
    }

    private static double charge(Limits limits) {
        return limits.si(Quantity.CHARGE_LIMIT);
    }

    private static RuleOverride override(Chemistry chemistry, Quantity quantity, double si, String reason) {
        return new RuleOverride(chemistry, quantity, si, null, reason);
    }
}
