package fettle.desk.glossary;

import java.util.List;

/** Every term, by word. */
public record GlossaryPage(List<Glossary.Term> terms) {}
