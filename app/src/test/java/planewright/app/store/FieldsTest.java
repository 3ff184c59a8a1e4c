package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What a record refuses is told with the place of the record, and nothing hangs on behind. */
class FieldsTest {
    @Test
    void aPanelThatIsRefusedIsNamedByItsPlace() throws Exception {
        var shape = JsonFiles.parse("""
                {"surfaces": [{"name": "wing", "panels": [{"rootChord": 1, "tipChord": 1, "span": 0}]}]}""");
        assertThatThrownBy(() -> PlanformJson.read(shape))
                .isInstanceOf(Unreadable.class)
                .hasMessageStartingWith("field 'surfaces[0].panels[0]': a panel has span 0.0 m");
    }
}
