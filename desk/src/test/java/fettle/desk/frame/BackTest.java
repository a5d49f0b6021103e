package fettle.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

final class BackTest {
    @ParameterizedTest
    @NullSource
    @ValueSource(
            strings = {
                "",
                "kit",
                "//elsewhere.example/",
                "/\\elsewhere.example",
                "https://elsewhere.example/",
                "/kit\r\nX: y",
                "/a\\b"
            })
    void neverLeadsAwayFromTheDesk(String address) {
        assertThat(Back.safe(address)).isEqualTo("/");
    }

    @ParameterizedTest
    @CsvSource({
        "/kit, /kit",
        "/kit/rules?chemistry=LiPo, /kit/rules?chemistry=LiPo",
        "/?done=4, /",
        "/kit/rules?done=4&chemistry=LiPo, /kit/rules?chemistry=LiPo"
    })
    void keepsTheAddressWithoutTheMessage(String address, String kept) {
        assertThat(Back.safe(address)).isEqualTo(kept);
    }

    @Test
    void addsAParameter() {
        assertThat(Back.with("/kit", "name", "Blue & white")).isEqualTo("/kit?name=Blue+%26+white");
        assertThat(Back.with("/kit?a=1", "b", "2")).isEqualTo("/kit?a=1&b=2");
    }
}
