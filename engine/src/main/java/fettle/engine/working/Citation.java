package fettle.engine.working;

/**
 * Where a figure comes from.
 *
 * @param text author, title, year, equation or table; or the habit it states
 * @param status how far it can be traced
 */
public record Citation(String text, CitationStatus status) {
    public static Citation commonPractice(String text) {
        return new Citation(text, CitationStatus.COMMON_PRACTICE);
    }

    public static Citation published(String text) {
        return new Citation(text, CitationStatus.PUBLISHED);
    }
}
